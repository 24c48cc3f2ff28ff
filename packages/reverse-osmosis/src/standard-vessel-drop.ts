/**
 * Pressure drop along the vessel brought to standard flow and 25 °C.
 *
 * Formula: ΔP (Qs/Qa)^1.5 [1 + 0.017 (T − 25)]
 * Source: UNSW Desal Wiki, "ASTM on Data Normalisation", revision 172.
 * Range: about 5 to 35 °C.
 * Error: unknown.
 * @example
 * ```ts
 * import { standardVesselDrop } from "@tapside/reverse-osmosis";
 * standardVesselDrop(10, { actual: 80, standard: 100 }, 15); // => 11.6
 * ```
 */
export const standardVesselDrop = (
  drop: number,
  feedBrineFlow: { readonly actual: number; readonly standard: number },
  temperatureC: number,
): number =>
  drop * (feedBrineFlow.standard / feedBrineFlow.actual) ** 1.5 * (1 + 0.017 * (temperatureC - 25));
