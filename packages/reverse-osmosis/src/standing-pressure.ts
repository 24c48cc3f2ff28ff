import { operatingPoint } from "./operating-point.ts";
import type { Conditions, Unit } from "./unit.ts";

/**
 * Pressure that stands before the shut-off as the tank gets full, kPa gauge, from the feed's standing pressure: a booster adds its rise
 * at what still runs to the drain.
 *
 * Formula: P = P_static + rise(Q_drain(P)) − filters(Q_drain(P)); without a booster P_static
 * Source: model of `operatingPoint`.
 * Range: as `operatingPoint`.
 * Error: that of the booster's curve.
 * @example
 * ```ts
 * import { simpleUnit, standingPressureKPaGauge } from "@tapside/reverse-osmosis";
 * const unit = simpleUnit({ areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65 }, { ratedLPerH: 40, ratedKPa: 400 });
 * const water = { temperatureC: 15, feedMgPerL: 300 };
 * standingPressureKPaGauge(unit, water, 300); // => 300
 * standingPressureKPaGauge({ ...unit, booster: { shutOffRiseKPa: 100, openFlowLPerH: 1e6 } }, water, 300); // => 400
 * ```
 */
export function standingPressureKPaGauge(
  unit: Unit,
  water: Pick<Conditions, "temperatureC" | "feedMgPerL">,
  staticFeedKPaGauge: number,
): number {
  if (!unit.booster) return staticFeedKPaGauge;
  const { temperatureC, feedMgPerL } = water;
  // A full tank's pressure is above all that a permeate pump lifts to: it stands.
  const { permeatePump: _, ...resting } = unit;
  const full = operatingPoint(resting, {
    temperatureC,
    feedMgPerL,
    feedPressureKPaGauge: staticFeedKPaGauge,
    tankPressureKPaGauge: 2000,
  });
  return full.kind === "refused" ? staticFeedKPaGauge : full.afterFilterKPaGauge;
}
