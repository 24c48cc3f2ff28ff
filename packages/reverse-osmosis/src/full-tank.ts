import { operatingPoint } from "./operating-point.ts";
import { standingLeakLPerH } from "./standing-leak.ts";
import type { Conditions, Unit } from "./unit.ts";

/** What a full tank and a unit at rest show. */
export interface FullTank {
  /** Sound: none; the drain must be silent. */
  readonly drainLPerH: number;
  /** With the feed valve shut: only what leaks back from the tank. */
  readonly drainFeedClosedLPerH: number;
  /** How fast the tank's pressure falls with nothing drawn, kPa per hour, at first. */
  readonly tankFallKPaPerH: number;
}

/**
 * Drain with the tank full, drain with the feed shut as well, and the fall of the tank's pressure.
 *
 * Formula: back leak q through check valve and element in series; dP/dt = q/(dV/dP), dV/dP = Σ V(P₀ + Pa)/(P + Pa)²; a shut-off that
 * is stuck open keeps the restrictor's flow running
 * Source: Boyle's law; where the water goes: common practice, no source.
 * Range: pressurised tanks. Osmotic flow through an idle element is left out (below 0.1 L/h for tap water).
 * Error: that of the leak; the fall slows as the pressure goes.
 * @example
 * ```ts
 * import { fullTank, simpleUnit } from "@tapside/reverse-osmosis";
 * const element = { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65 };
 * const sound = simpleUnit(element, { ratedLPerH: 45, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 50 });
 * const at = { feedPressureKPaGauge: 400, temperatureC: 15, feedMgPerL: 300, tankPressureKPaGauge: 256 };
 * fullTank(sound, at).drainLPerH; // => 0
 * fullTank({ ...sound, backLeakLPerHBar: 2 }, at).drainFeedClosedLPerH; // => 3.55
 * fullTank({ ...sound, backLeakLPerHBar: 2 }, at).tankFallKPaPerH; // => 56.6
 * ```
 */
export function fullTank(unit: Unit, conditions: Conditions): FullTank {
  const { tankPressureKPaGauge, temperatureC } = conditions;
  const back = unit.tanks.length > 0 ? standingLeakLPerH(unit, tankPressureKPaGauge, temperatureC) : 0;
  const perKPa = litresPerKPa(unit, tankPressureKPaGauge);
  return {
    drainLPerH: unit.shutOff.stuckOpen ? runningDrain(unit, conditions) : back,
    drainFeedClosedLPerH: back,
    tankFallKPaPerH: unit.shutOff.stuckOpen || perKPa === 0 ? 0 : back / perKPa,
  };
}

function runningDrain(unit: Unit, conditions: Conditions): number {
  const point = operatingPoint(unit, conditions);
  return point.kind === "refused" ? 0 : point.concentrateLPerH;
}

function litresPerKPa(unit: Unit, pressureKPaGauge: number): number {
  let sum = 0;
  for (const { volumeL, airChargeKPaGauge } of unit.tanks)
    if (pressureKPaGauge > airChargeKPaGauge)
      sum +=
        (volumeL * (airChargeKPaGauge + unit.atmosphericKPa)) / (pressureKPaGauge + unit.atmosphericKPa) ** 2;
  return sum;
}
