import type { CauseId } from "./causes.ts";
import { type PartId, REPAIRS } from "./repairs.ts";
import type { Scene } from "./scene.ts";

/**
 * The scene once causes were put right: a new part has no age and no litres behind it, and nobody complains yet.
 * The age of the filters is reset by either of them, as the scene keeps one age for both.
 */
export function sceneAfterRepairs(scene: Scene, repaired: readonly CauseId[]): Scene {
  const fitted = repaired.flatMap((cause) => REPAIRS[cause].parts);
  const isNew = (...parts: readonly PartId[]) => parts.some((part) => fitted.includes(part));
  return {
    ...scene,
    complaint: "routine",
    ...(isNew("element") && { elementYears: 0 }),
    ...(isNew("preFilter", "carbon") && { filterMonths: 0 }),
    ...(isNew("carbon") && { carbonShare: 0 }),
  };
}
