/**
 * Efficiency: water to the user over all water taken, in typical daily use with the tank filling and shutting off, a fraction. Not recovery.
 *
 * Formula: product/(product + drain), volumes over whole fillings
 * Source: WC&P 18 Jan 2008 and 15 Jul 2017 on point-of-use tests; drain-to-product form in EPA WaterSense P101CQSP.
 * Range: whole fillings.
 * Error: that of the volumes.
 * @example
 * ```ts
 * import { efficiency } from "@tapside/reverse-osmosis";
 * efficiency(1, 5); // => 0.1667
 * ```
 */
export const efficiency = (productL: number, drainL: number): number => productL / (productL + drainL);
