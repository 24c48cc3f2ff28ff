/**
 * Concentrate over feed concentration, from the salt balance.
 *
 * Formula: (1 − Y(1 − R))/(1 − Y)
 * Source: mass balance.
 * Range: recovery 0 to below 1, rejection 0 to 1 on the feed.
 * Error: none beyond that of its inputs.
 * @example
 * ```ts
 * import { concentrationFactor } from "@tapside/reverse-osmosis";
 * concentrationFactor(0.22, 1); // => 1.2821
 * ```
 */
export const concentrationFactor = (recovery: number, rejection: number): number =>
  (1 - recovery * (1 - rejection)) / (1 - recovery);
