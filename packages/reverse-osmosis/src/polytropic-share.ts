/**
 * Water share of a tank filled from its charge at some speed.
 *
 * Formula: 1 − (P₀/P)^(1/n), absolute pressures; n = 1 slow, 1.4 sudden
 * Source: polytropic gas law; exponents common practice.
 * Range: n from 1 to 1.4.
 * Error: the exponent is a guess between its limits.
 * @example
 * ```ts
 * import { polytropicShare } from "@tapside/reverse-osmosis";
 * polytropicShare({ charge: 7 + 14.7, full: 40 + 14.7 }, 1.4); // => 0.4834
 * ```
 */
export const polytropicShare = (
  absolute: { readonly charge: number; readonly full: number },
  polytropic = 1,
): number => 1 - (absolute.charge / absolute.full) ** (1 / polytropic);
