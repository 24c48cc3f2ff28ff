/**
 * Quantile of values by linear interpolation between order statistics (Hyndman & Fan 1996, type 7).
 *
 * Source: Hyndman & Fan 1996. Range: at least one value. Error: none of its own.
 *
 * @example
 * ```ts
 * import { quantile } from "@tapside/quantities";
 * quantile([4, 1, 3, 2], 0.5); // => 2.5
 * ```
 */
export function quantile(values: readonly number[], probability: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (sorted.length - 1) * probability;
  const low = Math.floor(at);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low]! + (at - low) * (sorted[high]! - sorted[low]!);
}
