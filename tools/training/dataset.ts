import { CAUSE_IDS, type CauseId } from "../../packages/diagnosis/src/causes.ts";
import { expectationOf } from "../../packages/diagnosis/src/expectation.ts";
import {
  contextFeatures,
  INPUTS,
  MEASURED_COUNT,
  measuredFeatures,
} from "../../packages/diagnosis/src/features.ts";
import { type Alteration, AS_MODELLED, drawPlace } from "../../packages/diagnosis/src/population.ts";
import type { Random } from "../../packages/diagnosis/src/random.ts";
import { scatteredReadings } from "../../packages/diagnosis/src/simulate-case.ts";
import { trueValues } from "../../packages/diagnosis/src/true-values.ts";

export const CONTEXT = INPUTS - 2 * MEASURED_COUNT;
/** How often the readings of one case are taken anew. */
export const TAKES = 3;

/** Four cases in ten: units scattered wider, readings with heavier tails. The laws stay those of the model. Assumed, no source. */
const WIDER: Alteration = { ...AS_MODELLED, spread: 1.12, noise: "student4" };
const WIDER_SHARE = 0.4;

/** Simulated cases as features; `second` is −1 where there is one cause. */
export interface Dataset {
  readonly size: number;
  readonly context: Float32Array;
  readonly measured: Float32Array;
  readonly first: Int16Array;
  readonly second: Int16Array;
  readonly impossible: Uint8Array;
}

export function simulateDataset(
  size: number,
  random: Random,
  draw: (random: Random) => readonly CauseId[],
  progress: (done: number) => void,
): Dataset {
  const data: Dataset = {
    size,
    context: new Float32Array(size * CONTEXT),
    measured: new Float32Array(size * TAKES * MEASURED_COUNT),
    first: new Int16Array(size),
    second: new Int16Array(size).fill(-1),
    impossible: new Uint8Array(size),
  };
  for (let i = 0; i < size; i++) {
    if (i % 5000 === 0) progress(i);
    const causes = draw(random);
    const scatter = random() < WIDER_SHARE ? WIDER : AS_MODELLED;
    const { scene, hidden } = drawPlace(causes, random, scatter);
    const expected = expectationOf(scene);
    const values = trueValues(hidden);
    data.context.set(contextFeatures(expected), i * CONTEXT);
    for (let take = 0; take < TAKES; take++) {
      const at = (i * TAKES + take) * MEASURED_COUNT;
      measuredFeatures(
        scatteredReadings(values, random, scatter.noise),
        expected,
        data.measured.subarray(at, at + MEASURED_COUNT),
      );
    }
    data.first[i] = CAUSE_IDS.indexOf(causes[0]!);
    if (causes[1]) data.second[i] = CAUSE_IDS.indexOf(causes[1]);
    data.impossible[i] = Number(scene.unit.booster === undefined);
  }
  return data;
}
