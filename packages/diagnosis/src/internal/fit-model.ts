import { APPLY } from "../apply-cause.ts";
import type { CauseId } from "../causes.ts";
import { type Hidden, soundHidden } from "../hidden.ts";
import type { Random } from "../random.ts";
import type { Scene } from "../scene.ts";
import { type Readings, SIGN_IDS, SIGNS, type SignId } from "../signs.ts";
import type { Values } from "../true-values.ts";
import { type Freedom, freedoms } from "./unit-freedoms.ts";

/** Causes at a scene as unknowns beside the readings: first the unit's own scatter, then one size a cause. */
export interface FitModel {
  readonly scene: Scene;
  readonly causes: readonly CauseId[];
  readonly free: readonly Freedom[];
  readonly branch: Random;
  readonly numbers: readonly SignId[];
  readonly looks: readonly SignId[];
  readonly readings: Readings;
}

/** `side`: which way every drawn branch of a cause falls. */
export function fitModel(
  scene: Scene,
  causes: readonly CauseId[],
  readings: Readings,
  side: number,
): FitModel {
  const taken = SIGN_IDS.filter((id) => Number.isFinite(readings[id]));
  return {
    scene,
    causes,
    free: freedoms(scene),
    branch: () => side,
    numbers: taken.filter((id) => SIGNS[id].kind !== "look"),
    looks: taken.filter((id) => SIGNS[id].kind === "look"),
    readings,
  };
}

export function truthOf(model: FitModel, z: readonly number[]): Hidden {
  const n = model.free.length;
  const sound = model.free.reduce((h, one, i) => one.apply(h, z[i]!), soundAt(model.scene));
  return model.causes.reduce(
    (h, cause, i) => APPLY[cause](h, Math.min(1.15, Math.max(-0.15, z[n + i]!)), model.branch),
    sound,
  );
}

/** Typical everyday demand belongs to a sound unit of this size. */
function soundAt(scene: Scene): Hidden {
  const made = scene.unit.elements.reduce((sum, one) => sum + one.areaM2 * one.waterLPerM2HBar * 4, 0);
  return { ...soundHidden(scene), dailyLitres: 24 * made * 0.18 };
}

/** What the model itself is off, relative. */
const MODEL_RELATIVE = 0.02;

const spread = (id: SignId, value: number): number =>
  Math.hypot(SIGNS[id].relative * value, MODEL_RELATIVE * value, SIGNS[id].floor) || 1e-6;

/** How far the numbers read lie off, in standard deviations. */
export const residuals = (model: FitModel, values: Values): number[] =>
  model.numbers.map((id) => (model.readings[id]! - values[id]) / spread(id, values[id]));

/** The same for all looks together, as a squared distance: −2 log of their chance. */
export const looksMisfit = (model: FitModel, values: Values): number =>
  model.looks.reduce((sum, id) => {
    const wrong = SIGNS[id].relative;
    const isRight = Math.round(model.readings[id]!) === Math.round(values[id]);
    return sum - 2 * Math.log(isRight ? 1 - wrong : wrong) + 2 * Math.log(1 - wrong);
  }, 0);
