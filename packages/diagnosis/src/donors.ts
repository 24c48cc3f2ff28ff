import { CAUSE_IDS, type CauseId } from "./causes.ts";
import { type Expectation, expectationOf } from "./expectation.ts";
import { featureOf, filledOf, isShown, MEASURED_COUNT, measuredFeatures, readMask } from "./features.ts";
import { drawTruth, withCauses } from "./population.ts";
import { seededRandom } from "./random.ts";
import type { Scene } from "./scene.ts";
import type { Readings } from "./signs.ts";
import { scatteredReadings } from "./simulate-case.ts";
import { trueValues } from "./true-values.ts";

/** A simulated visit to this very unit, for what a test not yet taken might show. */
export interface Donor {
  readonly causes: readonly CauseId[];
  readonly readings: Required<Readings>;
  readonly features: Float32Array;
}

/** Simulated visits by what is at work, made when first asked for and kept while the day's conditions stay. */
export interface DonorBank {
  readonly expected: Expectation;
  /** At least `count` of them; the same ones first, however many are asked. */
  donors(causes: readonly CauseId[], readings: Readings, count: number): readonly Donor[];
}

/** The scene with the day's pressure, temperature and water where they were read. */
function sceneToday(scene: Scene, readings: Readings): Scene {
  const { usual } = scene;
  const feedPressureKPaGauge = readings.beforeFilterPressure ?? usual.feedPressureKPaGauge;
  return {
    ...scene,
    usual: {
      ...usual,
      feedPressureKPaGauge: Math.min(900, Math.max(60, feedPressureKPaGauge)),
      temperatureC: Math.min(30, Math.max(3, readings.temperature ?? usual.temperatureC)),
    },
  };
}

/** Simulates one more each time it is called. */
function donorMaker(scene: Scene, causes: readonly CauseId[], expected: Expectation): () => Donor {
  const seed = causes.reduce((sum, cause) => 31 * sum + CAUSE_IDS.indexOf(cause) + 1, 7);
  const random = seededRandom(seed);
  return () => {
    const truth = withCauses(drawTruth(scene, random), causes, random);
    const readings = scatteredReadings(trueValues(truth), random);
    const features = new Float32Array(MEASURED_COUNT);
    measuredFeatures(readings, expected, features);
    return { causes, readings, features };
  };
}

export function donorBank(scene: Scene, expected: Expectation = expectationOf(scene)): DonorBank {
  let day = "";
  let kept = new Map<string, { readonly made: Donor[]; readonly make: () => Donor }>();
  return {
    expected,
    donors(causes, readings, count) {
      const today = sceneToday(scene, readings);
      const key = `${today.usual.feedPressureKPaGauge} ${today.usual.temperatureC}`;
      if (key !== day) kept = new Map();
      day = key;
      const name = causes.join("+");
      const known = kept.get(name) ?? { made: [], make: donorMaker(today, causes, expected) };
      kept.set(name, known);
      while (known.made.length < count) known.made.push(known.make());
      return known.made.slice(0, count);
    },
  };
}

/** How near donors' readings are to those taken: 1 when alike, towards 0 when not. */
export function nearnessTo(readings: Readings, expected: Expectation): (donor: Donor) => number {
  const has = readMask(readings);
  const filled = filledOf(readings, expected);
  const compared = Array.from({ length: MEASURED_COUNT }, (_, f) => f).filter((f) => isShown(f, has));
  const taken = Float32Array.from(compared, (f) => featureOf(f, filled, expected));
  return ({ features }) => {
    let distance = 0;
    for (let i = 0; i < compared.length; i++) {
      const gap = (features[compared[i]!]! - taken[i]!) / 0.7;
      distance += Math.min(9, gap * gap);
    }
    return Math.exp((-0.5 * distance * 6) / (6 + compared.length));
  };
}
