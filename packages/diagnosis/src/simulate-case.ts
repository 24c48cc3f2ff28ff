import type { CauseId } from "./causes.ts";
import type { Hidden } from "./hidden.ts";
import { type Alteration, AS_MODELLED, drawPlace } from "./population.ts";
import { normal, type Random } from "./random.ts";
import type { Scene } from "./scene.ts";
import { type Readings, SIGN_IDS, SIGNS } from "./signs.ts";
import { trueValues, type Values } from "./true-values.ts";

export interface SimulatedCase {
  readonly causes: readonly CauseId[];
  readonly scene: Scene;
  readonly hidden: Hidden;
  readonly readings: Required<Readings>;
}

/** Student t with four degrees of freedom, a tenth wider, or normal. */
function scatter(random: Random, kind: Alteration["noise"]): number {
  const z = normal(random);
  if (kind === "normal") return z;
  const chi = -2 * Math.log((1 - random()) * (1 - random()));
  return (1.1 * z) / Math.sqrt(chi / 4);
}

/** Values as instruments and eyes show them. */
export function scatteredReadings(
  values: Values,
  random: Random,
  kind: Alteration["noise"] = "normal",
): Required<Readings> {
  const readings: Partial<Record<keyof Values, number>> = {};
  for (const id of SIGN_IDS) {
    const { kind: sign, relative, floor } = SIGNS[id];
    const value = values[id];
    if (sign === "look") readings[id] = random() < relative ? 1 - value : value;
    else {
      const shown = value * (1 + relative * scatter(random, kind)) + floor * scatter(random, kind);
      readings[id] = Math.max(0, shown);
    }
  }
  return readings as Required<Readings>;
}

/** One case: a place, what is wrong there, and every reading as it would be taken. */
export function simulateCase(
  causes: readonly CauseId[],
  random: Random,
  altered: Alteration = AS_MODELLED,
): SimulatedCase {
  const { scene, hidden } = drawPlace(causes, random, altered);
  const readings = scatteredReadings(trueValues(hidden), random, altered.noise);
  return { causes, scene, hidden, readings };
}
