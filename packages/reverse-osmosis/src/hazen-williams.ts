/**
 * Head loss of a tube by Hazen–Williams, m. A cross-check only: in these bores it under-reads by 12 to 16 %.
 *
 * Formula: 10.67 L Q^1.852/(C^1.852 d^4.871), SI
 * Source: as in open EPANET-compatible solvers.
 * Range: turbulent water near 15 °C.
 * Error: 12 to 16 % low at 1/4 and 3/8 inch tube.
 * @example
 * ```ts
 * import { hazenWilliamsHeadM } from "@tapside/reverse-osmosis";
 * hazenWilliamsHeadM({ boreMm: 6.35, lengthM: 30.48 }, 227.12, 150); // => 25.5
 * ```
 */
export function hazenWilliamsHeadM(
  tube: { readonly boreMm: number; readonly lengthM: number },
  flowLPerH: number,
  coefficient: number,
): number {
  const flowM3PerS = flowLPerH / 3.6e6;
  return (
    (10.67 * tube.lengthM * flowM3PerS ** 1.852) / (coefficient ** 1.852 * (tube.boreMm / 1000) ** 4.871)
  );
}
