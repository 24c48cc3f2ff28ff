import type { PriorComponent } from "../prior.ts";
import { DIMENSIONS } from "./coordinates.ts";
import { cholesky, forwardSubstitute, solveCholesky } from "./linear.ts";
import type { Observation } from "./observations.ts";

const ROUNDS = 30;
/** Steps in logarithms, pH or °C: below this they end; longer ones are shortened; halved while the fit gets worse. */
const NEAR = 2e-3;
const FARTHEST = 3;
const LEAST_PACE = 0.01;
const N = DIMENSIONS;

/** Workspace for conditioning one bell on a set of observations. */
export interface Conditioner {
  /** Moves a draw of the bell onto the (disturbed) observations. */
  readonly onto: (y0: Float64Array, disturbance: Float64Array, y: Float64Array) => void;
  /** Logarithm of how probable the bell makes the observations, linearised at its best water, which is written to `best`. */
  readonly evidence: (best: Float64Array) => number;
}

/**
 * Repeated linearisation (Gauss–Newton in the space of the observations): y ← y0 + C Jᵀ (J C Jᵀ + R)⁻¹ (d − g(y) + J (y − y0)),
 * going only as far as the fit gets better: in permeate, far from the bells, the full step overshoots for ever.
 * The draw of the bell and the disturbance of the readings make the result a draw of the posterior where g is
 * linear, and close to one where it bends.
 */
export function createConditioner(
  component: PriorComponent,
  observations: readonly Observation[],
): Conditioner {
  const { covariance } = component;
  const m = observations.length;
  const jacobian = new Float64Array(m * N);
  const spread = new Float64Array(m * N);
  const system = new Float64Array(m * m);
  const residual = new Float64Array(m);
  const gradient = new Float64Array(N);
  const vector = () => new Float64Array(N);
  const [pull, step, pullStep] = [vector(), vector(), vector()];
  const [trial, trialPull] = [vector(), vector()];
  let factor: Float64Array = new Float64Array(m * m);

  /** Most readings are of one coordinate, so most slopes are nothing; the factor needs the lower half of the system only. */
  const linearise = (y: Float64Array, y0: Float64Array, disturbance: Float64Array) => {
    for (let k = 0; k < m; k++) {
      const seen = observations[k]!;
      residual[k] = seen.value + disturbance[k]! * seen.sd - seen.of(y, gradient);
      for (let i = 0; i < N; i++) {
        jacobian[k * N + i] = gradient[i]!;
        residual[k]! += gradient[i]! * (y[i]! - y0[i]!);
      }
    }
    spread.fill(0);
    for (let k = 0; k < m; k++)
      for (let j = 0; j < N; j++) {
        const slope = jacobian[k * N + j]!;
        if (slope === 0) continue;
        for (let i = 0; i < N; i++) spread[k * N + i]! += covariance[j * N + i]! * slope;
      }
    for (let k = 0; k < m; k++)
      for (let l = 0; l <= k; l++) {
        let sum = k === l ? observations[k]!.sd ** 2 : 0;
        for (let i = 0; i < N; i++) {
          const slope = jacobian[l * N + i]!;
          if (slope !== 0) sum += slope * spread[k * N + i]!;
        }
        system[k * m + l] = sum;
      }
    factor = cholesky(system, m);
  };

  const misfit = (y: Float64Array, disturbance: Float64Array) => {
    let sum = 0;
    for (let k = 0; k < m; k++) {
      const { value, sd, of } = observations[k]!;
      sum += ((value + disturbance[k]! * sd - of(y, gradient)) / sd) ** 2;
    }
    return sum;
  };

  /** Full step of one round from `y`, and that of the `pull` with which the bell's covariance makes it: y − y0 = C pull. */
  const steps = (y: Float64Array, y0: Float64Array) => {
    solveCholesky(factor, m, residual);
    for (let i = 0; i < N; i++) {
      step[i] = y0[i]! - y[i]!;
      pullStep[i] = -pull[i]!;
      for (let k = 0; k < m; k++) {
        step[i]! += spread[k * N + i]! * residual[k]!;
        pullStep[i]! += jacobian[k * N + i]! * residual[k]!;
      }
    }
  };

  /** What is made least: misfit of the observations and distance from the draw, both in standard deviations squared. */
  const costOf = (at: Float64Array, pulledBy: Float64Array, y0: Float64Array, disturbance: Float64Array) => {
    let sum = misfit(at, disturbance);
    for (let i = 0; i < N; i++) sum += (at[i]! - y0[i]!) * pulledBy[i]!;
    return sum;
  };

  /** Goes as much of the step as makes the cost less; answers the cost there, or that before when none does. */
  const descend = (
    y: Float64Array,
    y0: Float64Array,
    disturbance: Float64Array,
    far: number,
    cost: number,
  ) => {
    for (let pace = Math.min(1, FARTHEST / far); pace > LEAST_PACE; pace /= 2) {
      for (let i = 0; i < N; i++) {
        trial[i] = y[i]! + pace * step[i]!;
        trialPull[i] = pull[i]! + pace * pullStep[i]!;
      }
      const reached = costOf(trial, trialPull, y0, disturbance);
      if (reached >= cost) continue;
      y.set(trial);
      pull.set(trialPull);
      return reached;
    }
    return cost;
  };

  const onto = (y0: Float64Array, disturbance: Float64Array, y: Float64Array) => {
    y.set(y0);
    pull.fill(0);
    let cost = costOf(y, pull, y0, disturbance);
    for (let round = 0; round < ROUNDS; round++) {
      linearise(y, y0, disturbance);
      steps(y, y0);
      const far = step.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
      const before = cost;
      if (far >= NEAR) cost = descend(y, y0, disturbance, far, before);
      if (cost === before) break;
    }
  };

  const evidence = (best: Float64Array) => {
    const none = new Float64Array(m);
    onto(component.mean, none, best);
    linearise(best, component.mean, none);
    forwardSubstitute(factor, m, residual);
    let log = 0;
    for (let k = 0; k < m; k++) log -= 0.5 * residual[k]! ** 2 + Math.log(factor[k * m + k]!);
    return log;
  };
  return { onto, evidence };
}
