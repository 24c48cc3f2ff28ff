import { known, type Outcome, refused } from "@tapside/quantities";
import { type FillingSpan, fillingSpan } from "./internal/filling-span.ts";
import { gaussNodes } from "./internal/gauss-legendre.ts";
import { tanksPressureKPaGauge } from "./internal/tanks.ts";
import { type FlowingPoint, operatingPoint } from "./operating-point.ts";
import type { Conditions, Unit } from "./unit.ts";

export interface Filling {
  readonly hours: number;
  readonly storedL: number;
  readonly drainL: number;
  /** Mixed in the tank, this filling only. */
  readonly meanMgPerL: number;
  /** Stored over stored and drained: counts the slow end of the filling. */
  readonly efficiency: number;
  /** Permeate over feed at the start, tank still empty. */
  readonly recoveryAtStart: number;
  readonly shutOffKPaGauge: number;
  readonly start: FlowingPoint;
  readonly atShutOff: FlowingPoint;
  /** Along the filling, in rising order. */
  readonly course: readonly {
    readonly storedL: number;
    readonly tankKPaGauge: number;
    readonly permeateLPerH: number;
    readonly permeateMgPerL: number;
    readonly drainLPerH: number;
  }[];
}

export interface FillingOptions {
  readonly segments?: number;
  /** Equal panels of 8 points each; one is good to 0.02 %. */
  readonly panels?: number;
  /** Start from this pressure instead of the empty tank. */
  readonly fromKPaGauge?: number;
  /** Feed pressure with nothing flowing: as the valve throttles, the feed rises towards it. */
  readonly staticFeedKPaGauge?: number;
}

/**
 * One filling of the tank from empty to shut-off: hours, litres, dissolved solids, drain. A vented tank fills to its float without
 * back-pressure; its shut-off pressure is 0.
 *
 * Formula: t = ∫ dV/Qp(P(V)), drain = ∫ Qc/Qp dV, mean = ∫ Cp dV/V; Boyle isothermal; Gauss quadrature over stored litres
 * Source: closed form of the same integral for constant permeability agrees (kitchen check: 3.021 h).
 * Range: shut-off above the air charge. A blend valve's water counts as stored; a remineraliser comes after the tank.
 * Error: quadrature below 0.05 %; feed pressure is taken as constant.
 * @example
 * ```ts
 * import { filling, simpleUnit } from "@tapside/reverse-osmosis";
 * const element = { areaM2: 1.51, waterLPerM2HBar: 2.4, saltLPerM2H: 0.261, polarisation: 1.2 };
 * const unit = { ...simpleUnit(element, { ratedLPerH: 32.1, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 56 }), shutOff: { ratio: 0.63 } };
 * const filled = filling(unit, { feedPressureKPaGauge: 308, temperatureC: 31.9, feedMgPerL: 525 });
 * filled.kind === "known" ? filled.value.hours : 0; // => 4.14
 * ```
 */
export function filling(
  unit: Unit,
  conditions: Omit<Conditions, "tankPressureKPaGauge">,
  options: FillingOptions = {},
): Outcome<Filling> {
  const span = fillingSpan(unit, conditions, options);
  return span.kind === "known" ? integrate(unit, conditions, span.value, options) : span;
}

function integrate(
  unit: Unit,
  conditions: Omit<Conditions, "tankPressureKPaGauge">,
  span: FillingSpan,
  options: FillingOptions,
): Outcome<Filling> {
  let nearFeedLPerH: number | undefined;
  const at = (tankKPaGauge: number) => {
    const point = operatingPoint(
      unit,
      { ...conditions, tankPressureKPaGauge: Math.max(0, tankKPaGauge) },
      { ...options, nearFeedLPerH },
    );
    if (point.kind === "flowing") nearFeedLPerH = point.feedLPerH;
    return point;
  };
  const start = at(span.fromKPaGauge);
  const atShutOff = at(span.toKPaGauge);
  if (start.kind !== "flowing") return start.kind === "refused" ? start : refused(start.kind);
  if (atShutOff.kind !== "flowing")
    return atShutOff.kind === "refused" ? atShutOff : refused("never-shuts-off");
  const panels = options.panels ?? 1;
  const width = (span.toL - span.fromL) / panels;
  const course: Filling["course"][number][] = [];
  const sum = { hours: 0, drainL: 0, saltMg: 0 };
  for (let panel = 0; panel < panels; panel++) {
    for (const [position, weight] of gaussNodes) {
      const storedL = span.fromL + (panel + position) * width;
      const tankKPaGauge = unit.storage === "vented" ? 0 : tanksPressureKPaGauge(unit, storedL);
      const point = at(tankKPaGauge);
      if (point.kind !== "flowing") return point.kind === "refused" ? point : refused("never-shuts-off");
      const litres = weight * width;
      sum.hours += litres / point.productLPerH;
      sum.drainL += (litres * point.concentrateLPerH) / point.productLPerH;
      sum.saltMg += litres * point.productMgPerL;
      const { permeateLPerH, permeateMgPerL, concentrateLPerH: drainLPerH } = point;
      course.push({ storedL, tankKPaGauge, permeateLPerH, permeateMgPerL, drainLPerH });
    }
  }
  const storedL = span.toL - span.fromL;
  return known({
    hours: sum.hours,
    storedL,
    drainL: sum.drainL,
    meanMgPerL: sum.saltMg / storedL,
    efficiency: storedL / (storedL + sum.drainL),
    recoveryAtStart: start.recovery,
    shutOffKPaGauge: span.toKPaGauge,
    start,
    atShutOff,
    course,
  });
}
