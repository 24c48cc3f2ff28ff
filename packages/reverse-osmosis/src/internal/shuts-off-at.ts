import { known, type Outcome } from "@tapside/quantities";
import { type OperatingOptions, operatingPoint } from "../operating-point.ts";
import { shutOffPressureKPaGauge } from "../shut-off.ts";
import type { Conditions, Unit } from "../unit.ts";

interface ShutOffSearch extends OperatingOptions {
  readonly withinKPa?: number;
}

/** Tank pressure at which filling ends: the shut-off's share of what stands before it with next to no permeate flowing. */
export function shutsOffAtKPaGauge(
  unit: Unit,
  conditions: Omit<Conditions, "tankPressureKPaGauge">,
  staticFeedKPaGauge?: number,
  { withinKPa = 1e-6, ...options }: ShutOffSearch = {},
): Outcome<number> {
  const { ratio } = unit.shutOff;
  if (staticFeedKPaGauge !== undefined) return known(shutOffPressureKPaGauge(staticFeedKPaGauge, ratio));
  let end = shutOffPressureKPaGauge(conditions.feedPressureKPaGauge, ratio);
  let nearFeedLPerH = options.nearFeedLPerH;
  for (let n = 0; n < 30; n++) {
    const at = { ...conditions, tankPressureKPaGauge: Math.max(0, end) };
    const point = operatingPoint(unit, at, { ...options, nearFeedLPerH });
    if (point.kind === "refused") return point;
    nearFeedLPerH = point.feedLPerH;
    const next = shutOffPressureKPaGauge(point.afterFilterKPaGauge, ratio);
    if (Math.abs(next - end) < withinKPa) return known(next);
    end = next;
  }
  return known(end);
}
