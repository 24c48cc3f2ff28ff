import { known, type Outcome, type Uncertain } from "@tapside/quantities";
import { isPressure, NINETEEN_IN_TWENTY, type PortSpread, portChanges } from "./internal/port-changes.ts";
import { middlePorts } from "./internal/ports-of-draw.ts";
import type { Unit } from "./unit.ts";
import { usualPermeatePumpScatter } from "./usual-permeate-pump.ts";

/** What can be read today, by port. Pressures kPa gauge, flows L/h, dissolved solids mg/L as sodium chloride. */
export type ExpectedPort =
  | "afterFilter"
  | "drain"
  | "permeate"
  | "permeateToWaste"
  | "tankFull"
  | "delivered";

export interface Interval {
  readonly low: number;
  readonly high: number;
  readonly value: number;
}

export interface Today {
  readonly feedPressureKPaGauge: Uncertain;
  readonly temperatureC: Uncertain;
  readonly feedMgPerL: Uncertain;
  readonly staticFeedKPaGauge?: number;
}

/** How far sound units scatter about their label, one standard deviation. Invented defaults, meant to be edited. */
export interface Scatter {
  readonly waterRelative: number;
  readonly saltRelative: number;
  readonly restrictorRelative: number;
  readonly filterDropRelative: number;
  readonly shutOffRatio: number;
  readonly airChargeKPa: number;
  /** Of a permeate pump: its ratio, and the pressure it leaves on the element. */
  readonly strokeRatioRelative: number;
  readonly pumpInletKPa: number;
  /** Of the share of feed that a blend valve lets by. */
  readonly blendRelative: number;
  readonly flowReadingRelative: number;
  readonly solidsReadingRelative: number;
  readonly solidsStepMgPerL: number;
  readonly gaugeKPa: number;
}

/** Source: common practice and judgement, no source; elements are commonly sold with ±15 to 20 % in flow. */
export const usualScatter: Scatter = {
  waterRelative: 0.09,
  saltRelative: 0.22,
  restrictorRelative: 0.06,
  filterDropRelative: 0.5,
  shutOffRatio: 0.018,
  airChargeKPa: 7,
  strokeRatioRelative: usualPermeatePumpScatter.strokeRatioRelative,
  pumpInletKPa: usualPermeatePumpScatter.inletKPa,
  blendRelative: 0.1,
  flowReadingRelative: 0.015,
  solidsReadingRelative: 0.02,
  solidsStepMgPerL: 0.6,
  gaugeKPa: 5,
};

const ownReading = (port: ExpectedPort, value: number, scatter: Scatter): number => {
  if (port === "afterFilter" || port === "tankFull") return scatter.gaugeKPa;
  if (port === "drain" || port === "permeate") return scatter.flowReadingRelative;
  return Math.hypot(scatter.solidsReadingRelative, scatter.solidsStepMgPerL / value);
};

function interval(port: ExpectedPort, value: number, u: PortSpread): Interval {
  const low = -NINETEEN_IN_TWENTY * u.down;
  const high = NINETEEN_IN_TWENTY * u.up;
  if (isPressure(port)) return { value, low: Math.max(0, value + low), high: value + high };
  return { value, low: value * Math.exp(low), high: value * Math.exp(high) };
}

/**
 * What a sound unit should read today at every port: the interval that holds 19 in 20.
 *
 * Formula: model at today's pressure, temperature and feed; scatter of parts and readings carried one by one, each side of the
 * middle for itself and added in squares; in logarithms for flows and dissolved solids
 * Source: model of `operatingPoint` and `filling`; scatter `usualScatter` (invented, editable).
 * Range: as `operatingPoint`; tank ports are absent when there is no tank to fill.
 * Error: only as good as the scatter assumed.
 * @example
 * ```ts
 * import { expectedReadings, simpleUnit } from "@tapside/reverse-osmosis";
 * const element = { areaM2: 2.2, waterLPerM2HBar: 4, saltLPerM2H: 0.65, polarisation: 1.1 };
 * const unit = simpleUnit(element, { ratedLPerH: 60, ratedKPa: 414 });
 * const today = { feedPressureKPaGauge: { value: 414, u: 0 }, temperatureC: { value: 25, u: 0 }, feedMgPerL: { value: 500, u: 0 } };
 * const expected = expectedReadings(unit, today);
 * expected.kind === "known" ? expected.value.permeate?.value : 0; // => 31.8
 * ```
 */
export function expectedReadings(
  unit: Unit,
  today: Today,
  scatter: Scatter = usualScatter,
): Outcome<Partial<Record<ExpectedPort, Interval>>> {
  const middle = middlePorts(unit, today);
  if (middle.kind !== "known") return middle;
  const ports = Object.keys(middle.value) as ExpectedPort[];
  const changes = portChanges(unit, today, scatter, ports.includes("delivered"));
  const entries = ports.map((port) => {
    const value = middle.value[port]!;
    const own = ownReading(port, value, scatter);
    const side = (to: keyof PortSpread) => Math.hypot(own, ...changes.map((one) => one[port]?.[to] ?? 0));
    return [port, interval(port, value, { down: side("down"), up: side("up") })] as const;
  });
  return known(Object.fromEntries(entries));
}
