/** A share with its 95 % interval. */
export interface Share {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly of: number;
}

/**
 * A share of `hits` in `of` with its 95 % interval.
 *
 * Formula: score interval, z = 1.96
 * Source: Wilson (1927), textbook.
 * Range: independent cases.
 * Error: none beyond the normal approximation.
 * @example
 * ```ts
 * import { shareOf } from "@tapside/diagnosis";
 * shareOf(45, 50).low; // => 0.786
 * ```
 */
export function shareOf(hits: number, of: number): Share {
  if (of === 0) return { value: 0, low: 0, high: 1, of };
  const z = 1.96;
  const p = hits / of;
  const middle = p + (z * z) / (2 * of);
  const half = z * Math.sqrt((p * (1 - p)) / of + (z * z) / (4 * of * of));
  const scale = 1 + (z * z) / of;
  return { value: p, low: (middle - half) / scale, high: (middle + half) / scale, of };
}
