import { known, type Outcome, refused } from "@tapside/quantities";

/** Salt a meter pretends the water holds. "442": 40 % sodium sulfate, 40 % bicarbonate, 20 % chloride. */
export type TdsScale = "NaCl" | "KCl" | "442";

/** A value read off a scale table, and how far to trust it. */
export interface ScaleReading {
  readonly value: number;
  /** Relative standard uncertainty of the conversion alone, not of the meter. */
  readonly relativeUncertainty: number;
  /** Whether the conductivity lies within the table (23–12 880 µS/cm). */
  readonly withinTable: boolean;
}

/** Conductivity at 25 °C in µS/cm, then ppm per µS/cm on each scale. */
const TABLE: readonly { readonly ec: number; readonly factor: Readonly<Record<TdsScale, number>> }[] = [
  { ec: 23, factor: { KCl: 0.504, NaCl: 0.465, "442": 0.641 } },
  { ec: 84, factor: { KCl: 40.38 / 84, NaCl: 38.04 / 84, "442": 50.5 / 84 } },
  { ec: 447, factor: { KCl: 225.6 / 447, NaCl: 215.5 / 447, "442": 300 / 447 } },
  { ec: 1413, factor: { KCl: 744.7 / 1413, NaCl: 702.1 / 1413, "442": 1000 / 1413 } },
  { ec: 12880, factor: { KCl: 7447 / 12880, NaCl: 7230 / 12880, "442": 11367 / 12880 } },
];
const LOWEST = TABLE[0]!.ec;
const HIGHEST = TABLE[TABLE.length - 1]!.ec;

function factorAt(ec25: number, scale: TdsScale): number {
  let i = 0;
  while (i < TABLE.length - 2 && TABLE[i + 1]!.ec < ec25) i++;
  const low = TABLE[i]!;
  const high = TABLE[i + 1]!;
  const f = Math.min(Math.max(Math.log(ec25 / low.ec) / Math.log(high.ec / low.ec), 0), 1);
  return low.factor[scale] + f * (high.factor[scale] - low.factor[scale]);
}

/** 1 % in the part two manuals agree on, 3 % where one value stands alone, growing outside the table. */
function relativeUncertainty(ec25: number): number {
  if (ec25 < LOWEST) return Math.min(0.05 + 0.05 * Math.log10(LOWEST / Math.max(ec25, 0.1)), 0.2);
  if (ec25 > HIGHEST) return Math.min(0.05 + 0.1 * Math.log10(ec25 / HIGHEST), 0.3);
  return ec25 < 84 ? 0.03 : 0.01;
}

const reading = (value: number, ec25: number): ScaleReading => ({
  value,
  relativeUncertainty: ec25 > 0 ? relativeUncertainty(ec25) : 0.2,
  withinTable: ec25 >= LOWEST && ec25 <= HIGHEST,
});

/**
 * Dissolved solids in ppm as a meter on the named scale shows them for a conductivity at 25 °C in µS/cm.
 * The factor is read off a table in the logarithm of conductivity; outside it the end value is held.
 *
 * Source: TDS tables of two instrument manuals that agree (azmanual.top 404644, p. 43); one value at 23 µS/cm.
 * Range: 23–12 880 µS/cm. Error: stated with each answer.
 *
 * @example
 * ```ts
 * import { tdsOnScale } from "@tapside/water";
 * const shown = tdsOnScale(1413, "NaCl");
 * shown.value.value; // => 702.1
 * ```
 */
export function tdsOnScale(ec25UsPerCm: number, scale: TdsScale): Outcome<ScaleReading> {
  if (!(ec25UsPerCm >= 0)) return refused("negative-conductivity", { ec25UsPerCm });
  if (ec25UsPerCm === 0) return known(reading(0, 0));
  return known(reading(ec25UsPerCm * factorAt(ec25UsPerCm, scale), ec25UsPerCm));
}

/**
 * Conductivity at 25 °C in µS/cm behind a reading in ppm on the named scale: the inverse of `tdsOnScale`, by bisection
 * (the tables rise everywhere).
 *
 * Source, Range, Error: as `tdsOnScale`.
 */
export function ec25FromTds(tdsPpm: number, scale: TdsScale): Outcome<ScaleReading> {
  if (!(tdsPpm >= 0)) return refused("negative-tds", { tdsPpm });
  if (!Number.isFinite(tdsPpm)) return refused("not-a-number", { input: "tdsPpm" });
  let low = 0;
  let high = tdsPpm * 4;
  for (let i = 0; i < 60; i++) {
    const middle = 0.5 * (low + high);
    if (middle > 0 && middle * factorAt(middle, scale) > tdsPpm) high = middle;
    else low = middle;
  }
  return known(reading(0.5 * (low + high), 0.5 * (low + high)));
}

/** A reading in ppm on one scale as a meter on another would have shown it. Source, Range, Error: as `tdsOnScale`. */
export function convertTdsScale(tdsPpm: number, from: TdsScale, to: TdsScale): Outcome<ScaleReading> {
  const ec = ec25FromTds(tdsPpm, from);
  return ec.kind === "known" ? tdsOnScale(ec.value.value, to) : ec;
}
