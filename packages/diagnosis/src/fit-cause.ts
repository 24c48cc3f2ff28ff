import type { CauseId } from "./causes.ts";
import type { Hidden } from "./hidden.ts";
import { type FitModel, fitModel, looksMisfit, residuals, truthOf } from "./internal/fit-model.ts";
import { type InSlices, inOneGo } from "./internal/in-slices.ts";
import { dot, type LeastSquares, leastSquares, type Unknown } from "./internal/least-squares.ts";
import { solveSymmetric } from "./internal/solve-symmetric.ts";
import type { Scene } from "./scene.ts";
import type { Readings } from "./signs.ts";
import { trueValues, type Values } from "./true-values.ts";

/** What a truth is told in: one number, or nothing where the unit has no such part. */
export type Tell = (truth: Hidden) => number | undefined;

export interface CauseFit {
  readonly causes: readonly CauseId[];
  /** From 0 (mild) to 1 (severe), one a cause. */
  readonly shares: readonly number[];
  /** Half width of the shares, one standard deviation, with everything else left free (Laplace). */
  readonly uShares: readonly number[];
  /** Standard deviation of something the unit would have, from the readings' scatter and the unit's own (Laplace, linear). */
  uOf(tell: Tell): number;
  /** Squared distances of readings and freedoms together, each over its variance. */
  readonly misfit: number;
  /** The same with every reading counting no more than `MOST_OF_ONE`: one slip of a meter is no unknown fault. */
  readonly cappedMisfit: number;
  readonly count: number;
  /** What it would read at every sign. */
  readonly wouldRead: Values;
  /** The unit as it would be. */
  readonly truth: Hidden;
}

/** Chosen with `UNEXPLAINED_BELOW` on simulated visits with seeds of their own. */
const MOST_OF_ONE = 7;

/** What the unit's own scatter may be, in its standard deviations. */
const SCATTER: Unknown = {
  start: 0,
  expected: 0,
  sd: 1,
  stepAt: () => 0.15,
  low: Number.NEGATIVE_INFINITY,
  high: Number.POSITIVE_INFINITY,
};

/** How large a cause may be: from 0 (mild) to 1 (severe), felt towards the middle. */
const SIZE: Unknown = {
  start: 0.5,
  expected: 0.5,
  sd: 0.6,
  stepAt: (value) => (value > 0.5 ? -0.03 : 0.03),
  low: -0.1,
  high: 1.1,
};

/** What the squared distances hold above the most that one may count. */
const excess = (r: readonly number[]): number =>
  r.reduce((sum, one) => sum + Math.max(0, one * one - MOST_OF_ONE), 0);

const unitVector = (n: number, at: number): number[] => Array.from({ length: n }, (_, i) => Number(i === at));

/** Standard deviation along a gradient: the normal matrix is the inverse of the covariance. */
const widthAlong = (normal: readonly (readonly number[])[], gradient: readonly number[]): number =>
  Math.sqrt(Math.max(0, dot(gradient, solveSymmetric(normal, gradient))));

/** Of a number the truth tells, by how it moves with every freedom and size. */
function uAt(model: FitModel, { z, normal }: LeastSquares<Values>, tell: Tell): number {
  const told = (x: readonly number[]) => tell(truthOf(model, x)) ?? 0;
  const gradient = z.map((_, k) => {
    const h = k < model.free.length ? 0.15 : 0.05;
    const moved = (by: number) => told(z.map((v, i) => (i === k ? v + by : v)));
    return (moved(h) - moved(-h)) / (2 * h);
  });
  return widthAlong(normal, gradient);
}

interface Try {
  readonly model: FitModel;
  readonly fitted: LeastSquares<Values>;
  readonly misfit: number;
}

function* fitOneSide(model: FitModel): InSlices<Try> {
  const unknowns = [...model.free.map(() => SCATTER), ...model.causes.map(() => SIZE)];
  const fitted = yield* leastSquares(unknowns, (z) => {
    const values = trueValues(truthOf(model, z));
    return { found: values, residuals: residuals(model, values) };
  });
  return { model, fitted, misfit: fitted.cost + looksMisfit(model, fitted.found) };
}

/** As `fitCauses`, with a breath after every run of the forward model. */
export function* fitCausesInSlices(
  scene: Scene,
  causes: readonly CauseId[],
  readings: Readings,
): InSlices<CauseFit> {
  const one = yield* fitOneSide(fitModel(scene, causes, readings, 0.3));
  const other = yield* fitOneSide(fitModel(scene, causes, readings, 0.7));
  const { model, fitted, misfit } = other.misfit < one.misfit ? other : one;
  const { z, normal, found } = fitted;
  const from = model.free.length;
  return {
    causes,
    shares: causes.map((_, i) => Math.min(1, Math.max(0, z[from + i]!))),
    uShares: causes.map((_, i) => widthAlong(normal, unitVector(z.length, from + i))),
    uOf: (tell) => uAt(model, fitted, tell),
    misfit,
    cappedMisfit: misfit - excess(residuals(model, found)),
    count: model.numbers.length + model.looks.length,
    wouldRead: found,
    truth: truthOf(model, z),
  };
}

/** How large the given causes are, if they are what is wrong, and how badly the readings still fit. */
export const fitCauses = (scene: Scene, causes: readonly CauseId[], readings: Readings): CauseFit =>
  inOneGo(fitCausesInSlices(scene, causes, readings));
