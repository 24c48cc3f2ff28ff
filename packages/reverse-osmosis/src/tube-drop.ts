import { waterDensityKgPerM3 } from "./water-density.ts";
import { waterViscosityMPaS } from "./water-viscosity.ts";

export interface Tube {
  readonly boreMm: number;
  readonly lengthM: number;
  /** Sum of fitting coefficients; a push-in elbow is about 1 to 2 (from memory). */
  readonly fittingsK?: number;
}

/** A loss is an interval: in transition between laminar and turbulent nothing better is honest. */
export interface TubeDrop {
  readonly lowKPa: number;
  readonly highKPa: number;
  readonly reynolds: number;
  readonly regime: "still" | "laminar" | "transition" | "turbulent";
}

const roughnessMm = 0.0015;

const swameeJain = (reynolds: number, boreMm: number) =>
  0.25 / Math.log10(roughnessMm / (3.7 * boreMm) + 5.74 / reynolds ** 0.9) ** 2;

/**
 * Pressure lost along a plastic tube.
 *
 * Formula: Darcy–Weisbach; f = 64/Re below 2000, Swamee–Jain above 4000, between them the laminar and smooth Blasius laws as bounds
 * Source: textbook fluid mechanics; Swamee–Jain constants as in open network solvers; roughness 0.0015 mm for plastic.
 * Range: 0 to 45 °C, bores of 2 to 20 mm.
 * Error: 1 % laminar, 3 % turbulent, the bore's own tolerance is larger.
 * @example
 * ```ts
 * import { tubeDrop } from "@tapside/reverse-osmosis";
 * tubeDrop({ boreMm: 4.318, lengthM: 3.048 }, 18, 20).highKPa; // => 1.79
 * ```
 */
export function tubeDrop(tube: Tube, flowLPerH: number, temperatureC: number): TubeDrop {
  if (!(flowLPerH > 0)) return { lowKPa: 0, highKPa: 0, reynolds: 0, regime: "still" };
  const boreM = tube.boreMm / 1000;
  const density = waterDensityKgPerM3(temperatureC);
  const speed = flowLPerH / 3.6e6 / ((Math.PI / 4) * boreM ** 2);
  const reynolds = (density * speed * boreM) / (waterViscosityMPaS(temperatureC) / 1000);
  const dynamicKPa = (density * speed ** 2) / 2000;
  const kPa = (f: number) => dynamicKPa * ((f * tube.lengthM) / boreM + (tube.fittingsK ?? 0));
  const laminar = kPa(64 / reynolds);
  if (reynolds <= 2000) return { lowKPa: laminar, highKPa: laminar, reynolds, regime: "laminar" };
  if (reynolds < 4000)
    return { lowKPa: laminar, highKPa: kPa(0.3164 / reynolds ** 0.25), reynolds, regime: "transition" };
  const turbulent = kPa(swameeJain(reynolds, tube.boreMm));
  return { lowKPa: turbulent, highKPa: turbulent, reynolds, regime: "turbulent" };
}
