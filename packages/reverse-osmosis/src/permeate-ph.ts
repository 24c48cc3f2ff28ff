/**
 * pH of permeate: carbon dioxide passes freely, bicarbonate does not.
 *
 * Formula: pH_feed + log10(bicarbonate passage)
 * Source: carbonic acid equilibrium with equal carbon dioxide on both sides (common practice that it passes freely).
 * Range: pH 6 to 8.3, closed to air.
 * Error: about 0.05 where carbonate matters; air contact raises it within minutes.
 * @example
 * ```ts
 * import { permeatePh } from "@tapside/reverse-osmosis";
 * permeatePh(7.6, 0.05); // => 6.3
 * ```
 */
export const permeatePh = (feedPh: number, bicarbonatePassage: number): number =>
  feedPh + Math.log10(bicarbonatePassage);
