/**
 * Rejection on the feed, a fraction. Falls by itself with cold, low pressure or a full tank.
 *
 * Formula: 1 − Cp/Cf
 * Source: definition.
 * Range: one meter, one scale for both.
 * Error: (1 − R)√(rf² + rp² − 2ρ rf rp).
 * @example
 * ```ts
 * import { rejection } from "@tapside/reverse-osmosis";
 * rejection(500, 75); // => 0.85
 * ```
 */
export const rejection = (feedMgPerL: number, permeateMgPerL: number): number =>
  1 - permeateMgPerL / feedMgPerL;
