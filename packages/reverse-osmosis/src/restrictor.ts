import { capillaryFlow } from "./capillary-flow.ts";
import { orificeFlowLPerH } from "./orifice-flow.ts";
import { waterViscosityMPaS } from "./water-viscosity.ts";

/** What holds the concentrate back: known by its rating, its make, or one reading. `scale` > 1 passes more than stated. */
export type Restrictor = (
  | { readonly kind: "rated"; readonly ratedLPerH: number; readonly ratedKPa: number }
  | { readonly kind: "capillary"; readonly boreMm: number; readonly lengthM: number }
  | { readonly kind: "orifice"; readonly boreMm: number; readonly dischargeCoefficient?: number }
  | {
      readonly kind: "measured";
      readonly law: "orifice" | "laminar";
      readonly flowLPerH: number;
      readonly dropKPa: number;
      readonly temperatureC: number;
    }
) & { readonly scale?: number };

/** What small elements and restrictors are rated at, where nothing else is said: 60 psi, water of a room. Common practice, no source. */
export const usualRating = { kPa: 414, temperatureC: 20 } as const;

type Laws = {
  readonly [K in Restrictor["kind"]]: (
    restrictor: Extract<Restrictor, { readonly kind: K }>,
    dropKPa: number,
    temperatureC: number,
  ) => number;
};

const laws: Laws = {
  rated: (r, dropKPa) => r.ratedLPerH * Math.sqrt(dropKPa / r.ratedKPa),
  capillary: (r, dropKPa, temperatureC) => capillaryFlow(r, dropKPa, temperatureC).flowLPerH,
  orifice: (r, dropKPa, temperatureC) =>
    orificeFlowLPerH(r.boreMm, dropKPa, temperatureC, r.dischargeCoefficient),
  measured: (r, dropKPa, temperatureC) =>
    r.law === "orifice"
      ? r.flowLPerH * Math.sqrt(dropKPa / r.dropKPa)
      : (r.flowLPerH * (dropKPa / r.dropKPa) * waterViscosityMPaS(r.temperatureC)) /
        waterViscosityMPaS(temperatureC),
};

/**
 * Concentrate flow through a restrictor, L/h; zero without a pressure drop.
 *
 * Formula: rated and measured orifices ∝ √Δp, measured capillaries ∝ Δp/µ, others from their bore
 * Source: orifice and capillary laws of `orificeFlowLPerH` and `capillaryFlow`.
 * Range: Δp of 50 to 1000 kPa.
 * Error: that of the rating; a rated flow is often ±10 % (common practice, no source).
 * @example
 * ```ts
 * import { restrictorLPerH } from "@tapside/reverse-osmosis";
 * restrictorLPerH({ kind: "rated", ratedLPerH: 60, ratedKPa: 414 }, 103.5, 15); // => 30
 * ```
 */
export function restrictorLPerH(restrictor: Restrictor, dropKPa: number, temperatureC: number): number {
  if (!(dropKPa > 0)) return 0;
  const law = laws[restrictor.kind] as (r: Restrictor, dropKPa: number, temperatureC: number) => number;
  return (restrictor.scale ?? 1) * law(restrictor, dropKPa, temperatureC);
}
