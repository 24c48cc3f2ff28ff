import type { Booster } from "./unit.ts";

/** A booster by two points of its curve and the feed pressure its switch waits for; a curve of one point is none. */
export function boosterByTwoPoints(
  shutOffRiseKPa = 0,
  openFlowLPerH = 0,
  offBelowKPaGauge = 0,
): Booster | undefined {
  if (!(shutOffRiseKPa > 0 && openFlowLPerH > 0)) return undefined;
  return { shutOffRiseKPa, openFlowLPerH, ...(offBelowKPaGauge > 0 && { offBelowKPaGauge }) };
}
