import { known, type Outcome, refused, type Uncertain } from "@tapside/quantities";
import { type FillingOptions, filling } from "./filling.ts";
import { type Draw, middleDraw as middle, variedUnit } from "./internal/varied-unit.ts";
import { operatingPoint } from "./operating-point.ts";
import type { Unit } from "./unit.ts";

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
  flowReadingRelative: 0.015,
  solidsReadingRelative: 0.02,
  solidsStepMgPerL: 0.6,
  gaugeKPa: 5,
};

type Values = Readonly<Record<ExpectedPort, number>>;

/** Steps along the element: the middle to 0.01 %, the spread about it, itself known to a tenth, with fewer. */
const SEGMENTS = { centre: 20, spread: 6 } as const;

/** Every port of one draw; tank ports are left out when there is no pressurised tank or it cannot fill. */
function portsOf(
  unit: Unit,
  today: Today,
  scatter: Scatter,
  draw: Draw,
  segments: number,
): Outcome<Partial<Values>> {
  const varied = variedUnit(unit, scatter, draw);
  const { feedPressureKPaGauge: p, temperatureC: t, feedMgPerL: c, staticFeedKPaGauge } = today;
  const conditions = {
    feedPressureKPaGauge: p.value + draw.pressure * p.u,
    temperatureC: t.value + draw.temperature * t.u,
    feedMgPerL: c.value * Math.exp((draw.solids * c.u) / c.value),
  };
  const open = operatingPoint(varied, { ...conditions, tankPressureKPaGauge: 0 }, { segments });
  if (open.kind === "refused") return open;
  if (open.kind !== "flowing") return refused(open.kind);
  const ports = {
    afterFilter: open.afterFilterKPaGauge,
    drain: open.concentrateLPerH,
    permeate: open.permeateLPerH,
    permeateToWaste: open.permeateMgPerL,
  };
  const options: FillingOptions = {
    segments,
    ...(staticFeedKPaGauge !== undefined && { staticFeedKPaGauge }),
  };
  const filled = filling(varied, conditions, options);
  if (filled.kind !== "known") return known(ports);
  const delivered = filled.value.meanMgPerL + (unit.addedMgPerL ?? 0);
  if (unit.storage === "vented") return known({ ...ports, delivered });
  return known({ ...ports, tankFull: filled.value.shutOffKPaGauge, delivered });
}

const ownReading = (port: ExpectedPort, value: number, scatter: Scatter): number => {
  if (port === "afterFilter" || port === "tankFull") return scatter.gaugeKPa;
  if (port === "drain" || port === "permeate") return scatter.flowReadingRelative;
  return Math.hypot(scatter.solidsReadingRelative, scatter.solidsStepMgPerL / value);
};

const isPressure = (port: ExpectedPort) => port === "afterFilter" || port === "tankFull";

function interval(port: ExpectedPort, value: number, u: number): Interval {
  const k = 1.96;
  if (isPressure(port)) return { value, low: Math.max(0, value - k * u), high: value + k * u };
  return { value, low: value * Math.exp(-k * u), high: value * Math.exp(k * u) };
}

/**
 * What a sound unit should read today at every port: the interval that holds 19 in 20.
 *
 * Formula: model at today's pressure, temperature and feed; scatter of parts and readings carried to first order, in logarithms
 * for flows and dissolved solids
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
  const centre = portsOf(unit, today, scatter, middle, SEGMENTS.centre);
  if (centre.kind !== "known") return centre;
  const ports = Object.keys(centre.value) as ExpectedPort[];
  const variance = new Map(ports.map((port) => [port, 0]));
  for (const name of Object.keys(middle) as (keyof Draw)[]) {
    const up = portsOf(unit, today, scatter, { ...middle, [name]: 1 }, SEGMENTS.spread);
    const down = portsOf(unit, today, scatter, { ...middle, [name]: -1 }, SEGMENTS.spread);
    if (up.kind !== "known" || down.kind !== "known") continue;
    for (const port of ports) {
      const [high, low] = [up.value[port], down.value[port]];
      if (high === undefined || low === undefined) continue;
      const change = isPressure(port) ? (high - low) / 2 : Math.log(high / low) / 2;
      variance.set(port, variance.get(port)! + change ** 2);
    }
  }
  const entries = ports.map((port) => {
    const value = centre.value[port]!;
    const u = Math.sqrt(variance.get(port)! + ownReading(port, value, scatter) ** 2);
    return [port, interval(port, value, u)] as const;
  });
  return known(Object.fromEntries(entries));
}
