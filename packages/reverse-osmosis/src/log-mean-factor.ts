/**
 * Average feed-to-concentrate concentration over the feed concentration, at full rejection.
 *
 * Formula: ln(1/(1 − Y))/Y
 * Source: UNSW Desal Wiki, "ASTM on Data Normalisation", revision 389.
 * Range: recovery 0 to below 1.
 * Error: with the arithmetic mean it differs by 1.4 % at Y = 0.25.
 * @example
 * ```ts
 * import { logMeanFactor } from "@tapside/reverse-osmosis";
 * logMeanFactor(0.2); // => 1.1157
 * ```
 */
export const logMeanFactor = (recovery: number): number =>
  recovery < 1e-9 ? 1 : -Math.log1p(-recovery) / recovery;
