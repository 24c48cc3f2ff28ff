import { type Correlation, contributions, covariance, propagate } from "./propagate.ts";
import type { Uncertain } from "./uncertain.ts";

/** Two results of the same inputs and how they correlate. */
export interface UncertainTogether {
  readonly first: Uncertain;
  readonly second: Uncertain;
  readonly correlation: number;
}

const INDEPENDENT: Correlation = () => 0;

/**
 * Two results computed from the same inputs, with the correlation they inherit: r = cov(f, g) / (u(f) u(g)).
 * Source: JCGM 100, 5.2 and H.2. Range, Error: as `propagate`.
 *
 * @example
 * ```ts
 * import { propagateTogether } from "@tapside/quantities";
 * const flows = [{ value: 250, u: 2 }, { value: 750, u: 6 }];
 * propagateTogether(([p, c]) => p / (p + c), ([p, c]) => c / p, flows).correlation; // => -1.000
 * ```
 */
export function propagateTogether(
  f: (inputs: readonly number[]) => number,
  g: (inputs: readonly number[]) => number,
  inputs: readonly Uncertain[],
  correlation: Correlation = INDEPENDENT,
): UncertainTogether {
  const first = propagate(f, inputs, correlation);
  const second = propagate(g, inputs, correlation);
  const scale = first.u * second.u;
  const shared = covariance(contributions(f, inputs), contributions(g, inputs), correlation);
  return { first, second, correlation: scale > 0 ? shared / scale : 0 };
}
