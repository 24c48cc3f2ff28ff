import type { LifePoint } from "./assessment.ts";

/** A visit on the life strip: 0 = the first one judged, 1 = the last; ratios against new with their U (k = 2). */
export interface PlacedLifePoint {
  readonly place: number;
  readonly flowRatio?: number;
  readonly flowU?: number;
  readonly saltRatio?: number;
  readonly saltU?: number;
  readonly filters: boolean;
  readonly bypass: boolean;
  /** The visit looked at. */
  readonly today: boolean;
}

/** The judged visits of an element placed in time; none when there are fewer than two to compare. */
export function lifeOnStrip(life: readonly LifePoint[], visitId: string): readonly PlacedLifePoint[] {
  const judged = life.filter((point) => point.flowRatio || point.saltRatio);
  if (judged.length < 2) return [];
  const times = judged.map((point) => Date.parse(point.at));
  const first = Math.min(...times);
  const span = Math.max(...times) - first || 1;
  return judged.map((point, i) => ({
    place: (times[i]! - first) / span,
    ...(point.flowRatio && { flowRatio: point.flowRatio.value, flowU: 2 * point.flowRatio.u }),
    ...(point.saltRatio && { saltRatio: point.saltRatio.value, saltU: 2 * point.saltRatio.u }),
    filters: point.marks.includes("filters"),
    bypass: point.marks.includes("bypass"),
    today: point.visit === visitId,
  }));
}
