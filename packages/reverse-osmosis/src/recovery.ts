/**
 * Recovery: permeate over feed at one moment, a fraction. Not efficiency.
 *
 * Formula: Qp/(Qp + Qc)
 * Source: definition; rated with the tank bypassed in WC&P 15 Jul 2017.
 * Range: both flows taken together, tank isolated.
 * Error: Y(1 − Y)√(rp² + rc²) from relative errors of the flows.
 * @example
 * ```ts
 * import { recovery } from "@tapside/reverse-osmosis";
 * recovery(10, 40); // => 0.2
 * ```
 */
export const recovery = (permeateLPerH: number, drainLPerH: number): number =>
  permeateLPerH / (permeateLPerH + drainLPerH);
