/**
 * Drawdown of a well-type tank as a share of its volume: charge, cut-in and cut-out.
 *
 * Formula: P₁/P₂ − P₁/P₃, absolute pressures in one unit
 * Source: The Driller, article 84709 (R. Pelikan, 2006).
 * Range: charge not above cut-in; slow filling.
 * Error: a sudden draw gives up to a third less.
 * @example
 * ```ts
 * import { drawdownShare } from "@tapside/reverse-osmosis";
 * drawdownShare({ charge: 28 + 14.7, cutIn: 30 + 14.7, cutOut: 50 + 14.7 }); // => 0.2953
 * ```
 */
export const drawdownShare = (absolute: {
  readonly charge: number;
  readonly cutIn: number;
  readonly cutOut: number;
}): number => absolute.charge / absolute.cutIn - absolute.charge / absolute.cutOut;
