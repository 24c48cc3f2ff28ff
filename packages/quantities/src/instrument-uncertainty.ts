/** What an instrument's sheet states. Limits ± are taken as rectangular. */
export interface Accuracy {
  readonly percentOfReading?: number;
  readonly percentOfFullScale?: number;
  readonly fullScale?: number;
  readonly resolution?: number;
}

/** Standard uncertainty of one reading, split: `gain` is shared by all readings of the same instrument. */
export interface ReadingUncertainty {
  readonly u: number;
  /** Part proportional to the reading, common to every reading of this instrument. */
  readonly gain: number;
  readonly own: number;
}

const SQRT3 = Math.sqrt(3);
const SQRT12 = Math.sqrt(12);

/**
 * Standard uncertainty of a reading: limits ±a count as rectangular, u = a/√3; a display step d gives d/√12.
 * Source: JCGM 100, type B evaluation (4.3). Error: the sheet's limits are taken at their word.
 *
 * @example
 * ```ts
 * import { instrumentUncertainty } from "@tapside/quantities";
 * instrumentUncertainty(350, { percentOfReading: 2, resolution: 1 }).u; // => 4.052
 * ```
 */
export function instrumentUncertainty(reading: number, accuracy: Accuracy): ReadingUncertainty {
  const gain = ((accuracy.percentOfReading ?? 0) / 100) * (Math.abs(reading) / SQRT3);
  const scale = ((accuracy.percentOfFullScale ?? 0) / 100) * ((accuracy.fullScale ?? 0) / SQRT3);
  const step = (accuracy.resolution ?? 0) / SQRT12;
  const own = Math.hypot(scale, step);
  return { u: Math.hypot(gain, own), gain, own };
}
