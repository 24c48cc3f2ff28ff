/**
 * Diffusivity of a 1:1 salt from its ions', in the unit of the ions'.
 *
 * Formula: 2·D₊·D₋/(D₊ + D₋)
 * Source: Nernst–Hartley, textbook; ion values in the USGS file phreeqc.dat, 22 May 2024.
 * Range: dilute.
 * Error: 0.2 % against the handbook value for sodium chloride.
 * @example
 * ```ts
 * import { saltDiffusivity } from "@tapside/reverse-osmosis";
 * saltDiffusivity(1.33, 2.033); // => 1.608
 * ```
 */
export const saltDiffusivity = (cation: number, anion: number): number =>
  (2 * cation * anion) / (cation + anion);
