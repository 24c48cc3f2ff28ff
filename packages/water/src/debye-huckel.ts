import { DEBYE_HUCKEL_ROWS } from "./internal/debye-huckel-table.ts";

/** Debye–Hückel parameters and the solvent's properties at one temperature. */
export interface DebyeHuckel {
  readonly a: number;
  readonly bPerAngstrom: number;
  readonly dielectric: number;
  readonly densityGPerMl: number;
}

/**
 * Debye–Hückel A and B (molal, decimal), dielectric constant and density of water, interpolated linearly in a table
 * of 5 °C steps (10 °C above 100 °C). Temperatures outside 0–160 °C take the end of the table.
 *
 * Source: `reference/p82` (USGS general geochemistry code, public domain).
 * Range: 0–160 °C.
 * Error: below 0.001 in A by interpolation.
 *
 * @example
 * ```ts
 * import { debyeHuckel } from "@tapside/water";
 * debyeHuckel(25).a; // => 0.5100
 * ```
 */
export function debyeHuckel(temperatureC: number): DebyeHuckel {
  const rows = DEBYE_HUCKEL_ROWS;
  const last = rows.length - 1;
  let i = 0;
  while (i < last - 1 && rows[i + 1]![0] < temperatureC) i++;
  const low = rows[i]!;
  const high = rows[i + 1]!;
  const f = Math.min(Math.max((temperatureC - low[0]) / (high[0] - low[0]), 0), 1);
  const at = (k: 1 | 2 | 3 | 4) => low[k] + f * (high[k] - low[k]);
  return { a: at(1), bPerAngstrom: at(2), dielectric: at(3), densityGPerMl: at(4) };
}
