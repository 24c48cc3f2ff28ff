import { COORDINATES, DIMENSIONS } from "./coordinates.ts";
import type { Observation } from "./observations.ts";

/** Squared misfit, in standard uncertainties, up to which readings may be of one water: the real analyses, read in full, reach 19. */
const MOST_MISFIT = 30;
/** mg/L. Amorphous silica dissolves to about 400 mg/L in boiling water; more is only what is left over of the solids. */
const MOST_SILICA = 400;
const SILICA = COORDINATES.indexOf("SiO2");

/** The reading that fits the others least when even the nearest of some waters cannot have them all, or undefined. */
export function contradiction(
  observations: readonly Observation[],
  waters: readonly Float64Array[],
): string | undefined {
  const gradient = new Float64Array(DIMENSIONS);
  const fits = waters.map((water) => {
    const misfits = observations.map(({ of, value, sd }) => ((value - of(water, gradient)) / sd) ** 2);
    return { water, misfits, sum: misfits.reduce((a, b) => a + b, 0) };
  });
  const { water, misfits, sum } = fits.reduce((a, b) => (b.sum < a.sum ? b : a));
  if (sum > MOST_MISFIT) return observations[misfits.indexOf(Math.max(...misfits))]!.reading;
  return Math.exp(water[SILICA]!) > MOST_SILICA ? "tdsMgPerL" : undefined;
}
