import { COORDINATES, type CoordinateId } from "./coordinates.ts";

/** Ions that bacteria take away where oxygen is gone. */
const LOST: readonly CoordinateId[] = ["SO4", "NO3"];
const LEAST_ROWS = 10;

const sharePlace = (sorted: readonly number[], share: number) => sorted[Math.floor(sorted.length * share)]!;

/**
 * Rows of one source with the long lower tail of sulfate and nitrate drawn up to where the upper half ends on its side:
 * the bell is fitted to waters that kept them; the others have bells of their own.
 */
export function withoutLoss(rows: readonly Float64Array[]): readonly Float64Array[] {
  if (rows.length < LEAST_ROWS) return rows;
  const out = rows.map((row) => row.slice());
  for (const id of LOST) {
    const i = COORDINATES.indexOf(id);
    const sorted = rows.map((row) => row[i]!).sort((a, b) => a - b);
    const middle = sharePlace(sorted, 0.5);
    const least = 2 * middle - sharePlace(sorted, 0.84);
    for (const row of out) row[i] = Math.max(row[i]!, least);
  }
  return out;
}
