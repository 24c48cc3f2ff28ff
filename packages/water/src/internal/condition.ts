import type { PriorComponent } from "../prior.ts";
import { DIMENSIONS } from "./coordinates.ts";
import { cholesky, forwardSubstitute, solveCholesky } from "./linear.ts";
import type { Observation } from "./observations.ts";

const ROUNDS = 10;
const N = DIMENSIONS;

/** Workspace for conditioning one bell on a set of observations. */
export interface Conditioner {
  /** Moves a draw of the bell onto the (disturbed) observations; answers the misfit of what it reached, in sd². */
  readonly onto: (y0: Float64Array, disturbance: Float64Array, y: Float64Array) => number;
  /** Logarithm of how probable the bell makes the observations, linearised at its best water, which is written to `best`. */
  readonly evidence: (best: Float64Array) => number;
}

/**
 * Repeated linearisation (Gauss–Newton in the space of the observations): y ← y0 + C Jᵀ (J C Jᵀ + R)⁻¹ (d − g(y) + J (y − y0)).
 * The draw of the bell and the disturbance of the readings make the result a draw of the posterior where g is
 * linear, and close to one where it bends.
 */
export function createConditioner(
  component: PriorComponent,
  observations: readonly Observation[],
): Conditioner {
  const m = observations.length;
  const jacobian = new Float64Array(m * N);
  const spread = new Float64Array(m * N);
  const system = new Float64Array(m * m);
  const residual = new Float64Array(m);
  const gradient = new Float64Array(N);
  let factor: Float64Array = new Float64Array(m * m);

  const linearise = (y: Float64Array, y0: Float64Array, disturbance: Float64Array) => {
    for (let k = 0; k < m; k++) {
      const seen = observations[k]!;
      residual[k] = seen.value + disturbance[k]! * seen.sd - seen.of(y, gradient);
      for (let i = 0; i < N; i++) {
        jacobian[k * N + i] = gradient[i]!;
        residual[k]! += gradient[i]! * (y[i]! - y0[i]!);
      }
    }
    for (let k = 0; k < m; k++)
      for (let i = 0; i < N; i++) {
        let sum = 0;
        for (let j = 0; j < N; j++) sum += component.covariance[i * N + j]! * jacobian[k * N + j]!;
        spread[k * N + i] = sum;
      }
    for (let k = 0; k < m; k++)
      for (let l = 0; l < m; l++) {
        let sum = k === l ? observations[k]!.sd ** 2 : 0;
        for (let i = 0; i < N; i++) sum += jacobian[l * N + i]! * spread[k * N + i]!;
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

  const onto = (y0: Float64Array, disturbance: Float64Array, y: Float64Array) => {
    y.set(y0);
    for (let round = 0; round < ROUNDS && m > 0; round++) {
      linearise(y, y0, disturbance);
      solveCholesky(factor, m, residual);
      const pace = round < 5 ? 1 : 0.6;
      let moved = 0;
      for (let i = 0; i < N; i++) {
        let target = y0[i]!;
        for (let k = 0; k < m; k++) target += spread[k * N + i]! * residual[k]!;
        const step = Math.min(Math.max((target - y[i]!) * pace, -3), 3);
        moved = Math.max(moved, Math.abs(step));
        y[i]! += step;
      }
      if (moved < 2e-3) break;
    }
    return misfit(y, disturbance);
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
