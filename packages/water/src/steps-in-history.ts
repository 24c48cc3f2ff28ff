/** One value of a history with its standard uncertainty. */
export interface HistoryPoint {
  readonly at: string;
  readonly value: number;
  readonly u: number;
}

/** A step in a history: the first point after it, and the mean before. */
export interface HistoryStep {
  readonly at: string;
  readonly before: number;
  readonly after: number;
}

/** Standard uncertainties by which a point must leave the run before it. */
export const STEP_K = 3;
/** Smallest share of the run's mean that counts as a step. */
export const STEP_SHARE = 0.1;

/**
 * Steps in a history, oldest first. Rule: a point opens a new run when it differs from the mean of the run before it
 * by more than 3 standard uncertainties of the difference (the point's own, and the run's scatter or its readings'
 * uncertainty, whichever is larger) and by more than 10 % of that mean. A slow drift is not a step.
 *
 * Source: control-chart habit of three sigma (common practice, no source). Range: two points or more.
 * Error: a first run of one point carries that point's uncertainty alone.
 *
 * @example
 * ```ts
 * import { stepsInHistory } from "@tapside/water";
 * const at = (value: number, i: number) => ({ at: `2026-0${i + 1}-01`, value, u: 5 });
 * stepsInHistory([300, 304, 297, 180, 184].map(at)).map((step) => step.at).join(); // => "2026-04-01"
 * ```
 */
export function stepsInHistory(points: readonly HistoryPoint[]): readonly HistoryStep[] {
  const steps: HistoryStep[] = [];
  let run: HistoryPoint[] = [];
  for (const point of points) {
    if (run.length > 0 && leaves(point, run)) {
      steps.push({ at: point.at, before: meanOf(run), after: point.value });
      run = [];
    }
    run.push(point);
  }
  return steps;
}

const meanOf = (run: readonly HistoryPoint[]) => run.reduce((sum, { value }) => sum + value, 0) / run.length;

function leaves(point: HistoryPoint, run: readonly HistoryPoint[]): boolean {
  const mean = meanOf(run);
  const read = Math.sqrt(run.reduce((sum, { u }) => sum + u * u, 0) / run.length);
  const scatter =
    run.length > 1
      ? Math.sqrt(run.reduce((sum, { value }) => sum + (value - mean) ** 2, 0) / (run.length - 1))
      : 0;
  const u = Math.hypot(point.u, Math.max(read, scatter) / Math.sqrt(run.length));
  const away = Math.abs(point.value - mean);
  return away > STEP_K * u && away > STEP_SHARE * Math.abs(mean);
}
