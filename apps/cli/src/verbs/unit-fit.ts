import { known, mapOutcome, type Outcome, propagate, refused, type Uncertain } from "@tapside/quantities";
import {
  atmosphericPressureKPa,
  boosterRiseKPa,
  bucketTest,
  type Conditions,
  cartridgeDropKPa,
  filling,
  fillingSays,
  fitUnit,
  type Unit,
  type UnitFit,
} from "@tapside/reverse-osmosis";
import { all, mapReader, number, optional, type Reader } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { figuresOfFit, type OtherFigures, partsBeforeElement, unitFrom } from "./unit-row.ts";

interface UsualError {
  readonly relative?: number;
  readonly absolute?: number;
}

/** A reading with its standard uncertainty from `<name>_u`, or a usual one. */
const reading = (name: string, { relative = 0, absolute = 0 }: UsualError): Reader<Uncertain> =>
  mapReader(all({ value: number(name), u: optional(`${name}_u`) }), ({ value, u }) =>
    known({ value, u: u ?? Math.hypot(relative * value, absolute) }),
  );

/** What may not have been read: why not, where it is missing or no number. */
const maybe = <T>({ needs, may, read }: Reader<T>): Reader<Outcome<T>> => ({
  needs: [],
  may: [...needs, ...may],
  read: (row) => {
    const outcome = read(row);
    return outcome.kind === "refused" ? outcome : known(outcome);
  },
});

const seenAtUnit = all({
  feedPressureKPaGauge: reading("feed_pressure_kPa_gauge", { absolute: 5 }),
  temperatureC: reading("temperature_C", { absolute: 0.3 }),
  feedMgPerL: reading("feed_NaCl_mg_L", { relative: 0.01, absolute: 0.3 }),
  permeateLPerH: reading("permeate_L_h", { relative: 0.01 }),
  permeateMgPerL: reading("permeate_mg_L", { relative: 0.01, absolute: 0.3 }),
  drainLPerH: reading("concentrate_L_h", { relative: 0.01 }),
});
type SeenAtUnit = typeof seenAtUnit extends Reader<infer T> ? T : never;

const reads = all({
  seen: seenAtUnit,
  other: figuresOfFit,
  tankKPaGauge: number("tank_pressure_kPa_gauge", 0),
  beforeFilters: maybe(reading("before_filter_kPa_gauge", { absolute: 5 })),
  hours: maybe(reading("fill_time_h", { relative: 0.02, absolute: 0.02 })),
  bucket: maybe(
    all({
      tankVolumeL: reading("tank_L", { relative: 0.01 }),
      fullKPaGauge: reading("tank_full_kPa_gauge", { absolute: 3 }),
      afterKPaGauge: reading("tank_after_kPa_gauge", { absolute: 3 }),
      drawnL: reading("drawn_L", { relative: 0.01 }),
    }),
  ),
});
type Visit = typeof reads extends Reader<infer T> ? T : never;

/** What the row's filters take from the feed's pressure and its booster adds; a pressure read behind the filters has lost theirs already. */
function gainBeforeElementKPa({ other, beforeFilters }: Visit, seen: SeenAtUnit): number {
  const feedLPerH = seen.permeateLPerH.value + seen.drainLPerH.value;
  const { booster, cartridges } = partsBeforeElement(other);
  const rise = booster ? boosterRiseKPa(booster, seen.feedPressureKPaGauge.value, feedLPerH) : 0;
  if (beforeFilters.kind === "known") return rise;
  return cartridges.reduce((sum, one) => sum - cartridgeDropKPa(one, feedLPerH), rise);
}

function fitTo(visit: Visit, seen: SeenAtUnit): Outcome<UnitFit> {
  const { other, tankKPaGauge, beforeFilters } = visit;
  const { feedPressureKPaGauge: feed, ...rest } = seen;
  if (other.permeatePump === "yes" && tankKPaGauge > other.pumpInletKPa)
    return refused("permeate-pump-lifts", { tankKPaGauge });
  return fitUnit({
    ...rest,
    elementPressureKPaGauge: { ...feed, value: feed.value + gainBeforeElementKPa(visit, seen) },
    temperatureForm: other.form,
    areaM2: other.areaM2 * Math.max(1, other.elements),
    polarisation: other.polarisation,
    restrictorRatedKPa: other.ratedKPa,
    permeatePressureKPaGauge: tankKPaGauge,
    ...(beforeFilters.kind === "known" && { feedPressureKPaGauge: beforeFilters.value }),
  });
}

const fittedUnit = (other: OtherFigures, fit: UnitFit): Unit =>
  unitFrom(
    {
      waterLPerM2HBar: fit.waterLPerM2HBar.value,
      saltLPerM2H: fit.saltLPerM2H.value,
      ratedLPerH: fit.restrictorRatedLPerH.value,
    },
    other,
  );

/** The feed as read, before an empty tank. */
const emptyTank = (seen: SeenAtUnit): Conditions => ({
  feedPressureKPaGauge: seen.feedPressureKPaGauge.value,
  temperatureC: seen.temperatureC.value,
  feedMgPerL: seen.feedMgPerL.value,
  tankPressureKPaGauge: 0,
});

/** Enough for how the hours answer to the readings; the hours themselves are stepped in full. */
const coarse = { segments: 6 };

/** Hours the unit fitted to these readings would need, uncertain as they are. */
function hoursOfFit(visit: Visit): Uncertain {
  const names = Object.keys(visit.seen) as (keyof SeenAtUnit)[];
  const hours = (values: readonly number[]) => {
    const seen = Object.fromEntries(
      names.map((name, i) => [name, { ...visit.seen[name], value: values[i]! }]),
    ) as SeenAtUnit;
    const filled = mapOutcome(fitTo(visit, seen), (fit) =>
      filling(fittedUnit(visit.other, fit), emptyTank(seen), coarse),
    );
    return filled.kind === "known" ? filled.value.hours : Number.NaN;
  };
  return propagate(
    hours,
    names.map((name) => visit.seen[name]),
  );
}

/** The filling's A over the fit's: both are uncertain, the fit through its readings. */
const byFilling = (visit: Visit, fit: UnitFit): Outcome<Uncertain> =>
  mapOutcome(visit.hours, (hours) => {
    const told = hoursOfFit(visit);
    const u = hours.value * Math.hypot(hours.u / hours.value, told.u / told.value);
    return fillingSays(fittedUnit(visit.other, fit), emptyTank(visit.seen), { value: hours.value, u })
      .waterRatio;
  });

const chargeOf = ({ bucket, other }: Visit): Outcome<Uncertain> =>
  mapOutcome(bucket, (test) =>
    mapOutcome(bucketTest({ ...test, atmosphericKPa: atmosphericPressureKPa(other.altitudeM) }), (tank) =>
      known(tank.airChargeKPaGauge),
    ),
  );

type Interval = (x: Uncertain) => readonly [low: number, high: number];

/** Of products and quotients of readings, which cannot be negative: even in the logarithm. */
const ofFactor: Interval = ({ value, u }) => {
  const spread = Math.exp((1.96 * u) / value);
  return [value / spread, value * spread];
};

/** Of differences of readings, which scatter evenly below zero too. */
const ofDifference: Interval = ({ value, u }) => [value - 1.96 * u, value + 1.96 * u];

const FOUND = [
  "A_L_m2_h_bar",
  "B_L_m2_h",
  "restrictor_L_h",
  "filter_drop_found_kPa",
  "air_charge_found_kPa_gauge",
  "A_by_filling_ratio",
];
const withTail = (name: string) => [name, `${name}_u`, `${name}_low`, `${name}_high`];

/** 19 in 20. */
function cells(name: string, interval: Interval, x: Uncertain | undefined): Record<string, number | string> {
  const numbers = x ? [x.value, x.u, ...interval(x)] : [];
  return Object.fromEntries(withTail(name).map((column, i) => [column, numbers[i] ?? ""]));
}

const orBlank = (outcome: Outcome<Uncertain>) => (outcome.kind === "known" ? outcome.value : undefined);

const cellsOf = (visit: Visit, fit: UnitFit) => ({
  ...cells("A_L_m2_h_bar", ofFactor, fit.waterLPerM2HBar),
  ...cells("B_L_m2_h", ofFactor, fit.saltLPerM2H),
  ...cells("restrictor_L_h", ofFactor, fit.restrictorRatedLPerH),
  ...cells("filter_drop_found_kPa", ofDifference, fit.filterDropKPa),
  ...cells("air_charge_found_kPa_gauge", ofDifference, orBlank(chargeOf(visit))),
  ...cells("A_by_filling_ratio", ofFactor, orBlank(byFilling(visit, fit))),
});

/** `tapside unit fit`: readings of one visit a row → A, B, restrictor, filter drop, air charge, with intervals. */
export const unitFitVerb = rowVerb({
  summary:
    "A, B and restrictor of a unit from one visit's readings a row; filter drop, air charge and what the filling says where read; u and 19-in-20 intervals",
  columns: FOUND.flatMap(withTail),
  reads,
  answer: (visit) => mapOutcome(fitTo(visit, visit.seen), (fit) => known(cellsOf(visit, fit))),
});
