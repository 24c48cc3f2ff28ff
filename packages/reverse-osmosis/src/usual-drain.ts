/** Share of the feed that becomes permeate where a label says nothing of its drain. Common practice, no source. */
const USUAL_RECOVERY_PERCENT = 15;

/**
 * Drain flow at the test conditions of a label that names none, L/h: what its recovery asks for. Two elements with one drain keep the
 * recovery of one, so both permeates count.
 *
 * Formula: Q_drain = Q_permeate (100 − Y)/Y
 * Source: balance of water; where the label gives no recovery either, 15 %: common practice, no source.
 * Range: recovery between 0 and 100 %; outside, the usual one.
 * Error: without a stated recovery a factor of two.
 * @example
 * ```ts
 * import { usualDrainLPerH } from "@tapside/reverse-osmosis";
 * usualDrainLPerH(20, 25); // => 60
 * usualDrainLPerH(15); // => 85
 * ```
 */
export function usualDrainLPerH(permeateLPerH: number, recoveryPercent = USUAL_RECOVERY_PERCENT): number {
  const percent = recoveryPercent > 0 && recoveryPercent < 100 ? recoveryPercent : USUAL_RECOVERY_PERCENT;
  return (permeateLPerH * (100 - percent)) / percent;
}
