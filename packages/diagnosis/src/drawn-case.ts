import { CAUSE_IDS, CAUSES, type CauseId } from "./causes.ts";
import { canMeet, OFTEN_TOGETHER } from "./pairs.ts";
import { ALTERED, type Alteration, AS_MODELLED } from "./population.ts";
import { type Assumed, usualAssumed } from "./posterior.ts";
import { drawIndex, type Random } from "./random.ts";
import type { Readings } from "./signs.ts";
import { type SimulatedCase, simulateCase } from "./simulate-case.ts";

/** Which simulated visits a score is made of. */
export interface ScorePlan {
  readonly cases: number;
  readonly seed: number;
  readonly altered: boolean;
}

export const alterationOf = (plan: ScorePlan): Alteration => (plan.altered ? ALTERED : AS_MODELLED);

/** Which causes a score is about. */
export type Catalogue = "studied" | "whole";

const weightsOf = (catalogue: Catalogue): readonly number[] =>
  CAUSE_IDS.map((id) => (catalogue === "studied" && !CAUSES[id].studied ? 0 : CAUSES[id].weight));

export const oneCauseOf = (catalogue: Catalogue): Assumed => ({
  ...usualAssumed,
  two: 0,
  considered: weightsOf(catalogue).map((weight) => Number(weight > 0)),
});

/** A visit with one cause, drawn by its weight. */
export function drawCase(random: Random, catalogue: Catalogue, altered: Alteration) {
  const truth = drawIndex(random, weightsOf(catalogue));
  return { truth, one: simulateCase([CAUSE_IDS[truth]!], random, altered) };
}

/** Two causes that can meet, by their weights; three in ten of those that are often met together. */
export function drawPair(random: Random): readonly CauseId[] {
  if (random() < 0.3) return OFTEN_TOGETHER[Math.floor(random() * OFTEN_TOGETHER.length)]!;
  for (;;) {
    const [a, b] = [0, 1].map(() => CAUSE_IDS[drawIndex(random, weightsOf("whole"))]!) as [CauseId, CauseId];
    if (canMeet(a, b)) return [a, b];
  }
}

/** Everything that can be read at this unit. */
export function allReadings(one: SimulatedCase): Readings {
  if (one.scene.unit.booster) return one.readings;
  const { elementPressure: _, ...rest } = one.readings;
  return rest;
}
