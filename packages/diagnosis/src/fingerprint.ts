import { CAUSE_IDS, CAUSES } from "./causes.ts";
import { expectationOf } from "./expectation.ts";
import { contextFeatures, MEASURED_COUNT, measuredFeatures } from "./features.ts";
import { seededRandom } from "./random.ts";
import { simulateCase } from "./simulate-case.ts";
import { TRAINING_SHARES } from "./training-shares.ts";

const MIXES = 6;

/**
 * How the forward model, the assumed frequencies and the features behave: a few mixtures of one fixed simulated case a cause. Weights
 * carry the fingerprint they were trained with; where it differs by more than rounding, they belong to another model.
 */
export function behaviourFingerprint(): readonly number[] {
  const features = new Float32Array(MEASURED_COUNT);
  return CAUSE_IDS.flatMap((cause, i) => {
    const { scene, readings } = simulateCase([cause], seededRandom(1000 + i));
    const expected = expectationOf(scene);
    measuredFeatures(readings, expected, features);
    const all = [...features, ...contextFeatures(expected), CAUSES[cause].weight, TRAINING_SHARES[i]!];
    return Array.from({ length: MIXES }, (_, mix) => mixed(all, seededRandom(mix)));
  });
}

function mixed(values: readonly number[], random: () => number): number {
  const sum = values.reduce((total, value) => total + (random() < 0.5 ? value : -value), 0);
  return Math.round(1000 * sum) / 1000;
}
