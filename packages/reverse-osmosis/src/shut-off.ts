/** Share of the feed pressure at which hydraulic shut-off valves close. Source: common practice, no source. */
export const usualShutOffRatio = { low: 0.6, high: 0.67, middle: 0.64 } as const;

/**
 * The same where a permeate pump keeps the tank's pressure off the element: it may fill to the feed's own pressure, so such units are shut
 * off anywhere from the usual share to all of it. u is one standard uncertainty. Assumed; common practice, no source.
 */
export const usualShutOffRatioWithPump = { low: 0.6, high: 1, middle: 0.8, u: 0.1 } as const;

/**
 * Between full and opening again, as a share of the feed pressure, for a valve that does not say: without it the unit
 * would switch for ever. Source: common practice, no source.
 */
export const usualHysteresis = 0.1;

/**
 * Tank pressure at which the hydraulic shut-off closes, kPa gauge.
 *
 * Formula: ratio × feed pressure
 * Source: common practice, no source: about two thirds; 0.60 to 0.67 is normal.
 * Range: ratio 0.5 to 0.8.
 * Error: ±5 % of the feed pressure between valves.
 * @example
 * ```ts
 * import { shutOffPressureKPaGauge } from "@tapside/reverse-osmosis";
 * shutOffPressureKPaGauge(414, 2 / 3); // => 276
 * ```
 */
export const shutOffPressureKPaGauge = (feedPressureKPaGauge: number, ratio: number): number =>
  ratio * feedPressureKPaGauge;

/** Whether the unit stands idle: once closed it stays closed until the tank falls by the valve's hysteresis. */
export function shutOffIsClosed(
  shutOff: { readonly ratio: number; readonly hysteresis?: number; readonly stuckOpen?: boolean },
  pressures: { readonly feedKPaGauge: number; readonly tankKPaGauge: number },
  wasClosed: boolean,
): boolean {
  if (shutOff.stuckOpen) return false;
  const closeAt = shutOff.ratio * pressures.feedKPaGauge;
  const openAt = (shutOff.ratio - (shutOff.hysteresis ?? 0.1)) * pressures.feedKPaGauge;
  return pressures.tankKPaGauge >= (wasClosed ? openAt : closeAt);
}
