import { soundHidden } from "./hidden.ts";
import type { Scene } from "./scene.ts";
import { trueValues, type Values } from "./true-values.ts";

/** A scene with what its unit shows when nothing is wrong, at the usual pressure, temperature and water. */
export interface Expectation {
  readonly scene: Scene;
  readonly sound: Values;
}

export const expectationOf = (scene: Scene): Expectation => ({
  scene,
  sound: trueValues(soundHidden(scene)),
});
