/**
 * Rejection at the membrane's own surface, a fraction: higher than rejection on the feed of the same element.
 *
 * Formula: J/(J + B)
 * Source: solution–diffusion.
 * Range: any flux above 0.
 * Error: none in the relation.
 * @example
 * ```ts
 * import { wallRejection } from "@tapside/reverse-osmosis";
 * wallRejection(4, 0.5); // => 0.889
 * ```
 */
export const wallRejection = (fluxLPerM2H: number, saltLPerM2H: number): number =>
  fluxLPerM2H / (fluxLPerM2H + saltLPerM2H);
