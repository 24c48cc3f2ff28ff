import { known, type Outcome, refused } from "@tapside/quantities";
import { CONSTITUENTS, type WaterAnalysis } from "./analysis.ts";
import { type FieldReadings, READING_UNCERTAINTY } from "./complete.ts";
import { hardnessFromIons } from "./hardness.ts";
import { calciteSaturationAt } from "./saturation-at.ts";

/** A reading not yet taken and the share of the calcite index's variance it would be expected to remove. */
export interface TellingReading {
  readonly reading: string;
  readonly shareOfVariance: number;
}

const CANDIDATES: Readonly<
  Record<string, { readonly of: (water: WaterAnalysis) => number; readonly sd: number }>
> = {
  temperatureC: { of: (w) => w.temperatureC, sd: READING_UNCERTAINTY.temperatureC },
  pH: { of: (w) => w.pH, sd: READING_UNCERTAINTY.pH },
  alkalinityMgPerLCaCO3: {
    of: (w) => Math.log(w.alkalinityMgPerLCaCO3 + 1e-3),
    sd: READING_UNCERTAINTY.alkalinity,
  },
  hardnessMgPerLCaCO3: {
    of: (w) => Math.log(hardnessFromIons(w.ions.Ca ?? 0, w.ions.Mg ?? 0) + 1e-3),
    sd: READING_UNCERTAINTY.hardness,
  },
  ...Object.fromEntries(
    CONSTITUENTS.map((id) => [
      id,
      { of: (w: WaterAnalysis) => Math.log((w.ions[id] ?? 0) + 1e-3), sd: READING_UNCERTAINTY.ion },
    ]),
  ),
};

function shareExplained(target: readonly number[], reading: readonly number[], sd: number): number {
  const mean = (x: readonly number[]) => x.reduce((a, b) => a + b, 0) / x.length;
  const [mt, mr] = [mean(target), mean(reading)];
  let covariance = 0;
  let variance = 0;
  let spread = 0;
  target.forEach((t, i) => {
    covariance += (t - mt) * (reading[i]! - mr);
    variance += (reading[i]! - mr) ** 2;
    spread += (t - mt) ** 2;
  });
  const noisy = variance + sd * sd * target.length;
  return spread > 0 ? covariance ** 2 / (noisy * spread) : 0;
}

/**
 * Which further reading would narrow the calcite index at a temperature most, from the samples of a completion: the
 * squared correlation of index and reading, the reading blurred by its own uncertainty. Best first.
 *
 * Source: linear expectation of variance (textbook regression). Range: 20 samples or more.
 * Error: blind to relations that bend; two readings together may tell more.
 */
export function mostTellingReadings(
  samples: readonly WaterAnalysis[],
  given: FieldReadings,
  temperatureC = 90,
): Outcome<readonly TellingReading[]> {
  if (samples.length < 20) return refused("too-few-samples", { samples: samples.length, least: 20 });
  const solved = samples
    .map((water) => ({ water, index: calciteSaturationAt(water, temperatureC) }))
    .flatMap(({ water, index }) =>
      index.kind === "known" && Number.isFinite(index.value) ? [{ water, index: index.value }] : [],
    );
  const target = solved.map(({ index }) => index);
  const taken = new Set([...Object.keys(given), ...Object.keys(given.ions ?? {})]);
  const shares = Object.entries(CANDIDATES)
    .filter(([reading]) => !taken.has(reading))
    .map(([reading, { of, sd }]) => ({
      reading,
      shareOfVariance: shareExplained(
        target,
        solved.map(({ water }) => of(water)),
        sd,
      ),
    }));
  return known(shares.sort((a, b) => b.shareOfVariance - a.shareOfVariance));
}
