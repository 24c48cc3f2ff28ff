import type { Uncertain } from "./uncertain.ts";

/** Correlation of input i with input j; absent pairs are independent. */
export type Correlation = (i: number, j: number) => number;

const INDEPENDENT: Correlation = () => 0;

/**
 * First-order propagation of uncertainty through `f`, with correlation: u² = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ, the sensitivities
 * cᵢ by central differences of ±uᵢ/10. Source: JCGM 100, equation (13). Error: first order; strong curvature within u is missed.
 *
 * @example
 * ```ts
 * import { propagate } from "@tapside/quantities";
 * propagate(([v, i]) => v / i, [{ value: 0.1, u: 0.001 }, { value: 0.015, u: 0.0005 }]).u; // => 0.232
 * ```
 */
export function propagate(
  f: (inputs: readonly number[]) => number,
  inputs: readonly Uncertain[],
  correlation: Correlation = INDEPENDENT,
): Uncertain {
  const parts = contributions(f, inputs);
  const variance = covariance(parts, parts, correlation);
  return { value: f(inputs.map((input) => input.value)), u: Math.sqrt(Math.max(0, variance)) };
}

/** cᵢ uᵢ: what each input contributes to the result's uncertainty, with its sign. */
export function contributions(
  f: (inputs: readonly number[]) => number,
  inputs: readonly Uncertain[],
): readonly number[] {
  const values = inputs.map((input) => input.value);
  return inputs.map((input, i) => sensitivity(f, values, i, input.u) * input.u);
}

/** Covariance of two results from the contributions of the same inputs; of one with itself it is the variance. */
export function covariance(a: readonly number[], b: readonly number[], correlation: Correlation): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < b.length; j++) {
      sum += a[i]! * b[j]! * (i === j ? 1 : correlation(Math.min(i, j), Math.max(i, j)));
    }
  }
  return sum;
}

function sensitivity(
  f: (inputs: readonly number[]) => number,
  values: readonly number[],
  i: number,
  u: number,
): number {
  if (u === 0) return 0;
  const step = u / 10;
  const at = (x: number) => f(values.map((value, k) => (k === i ? x : value)));
  return (at(values[i]! + step) - at(values[i]! - step)) / (2 * step);
}
