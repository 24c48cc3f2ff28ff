import { allKnown, known, mapOutcome, type Outcome, propagate, type Uncertain } from "@tapside/quantities";
import {
  atmosphericPressureKPa,
  bucketTest,
  filling,
  fillingSays,
  fitUnit,
  type UnitFit,
} from "@tapside/reverse-osmosis";
import type { RowVerb } from "./row-verb.ts";
import { cell, conditionsOfRow, type Row, temperatureFormOfRow, unitOfRow } from "./unit-row.ts";

/** A reading with its standard uncertainty from `<name>_u`, or a usual one. */
const reading = (row: Row, name: string, relative: number, absolute: number) =>
  mapOutcome(cell(row, name), (value) =>
    mapOutcome(cell(row, `${name}_u`, Math.hypot(relative * value, absolute)), (u) => known({ value, u })),
  );

const given = (row: Row, name: string) => (row[name]?.trim() ?? "") !== "";

const fitted = ["A_L_m2_h_bar", "B_L_m2_h", "restrictor_L_h"] as const;
const found = ["filter_drop_found_kPa", "air_charge_found_kPa_gauge", "A_by_filling_ratio"] as const;
const withTail = (name: string) => [name, `${name}_u`, `${name}_low`, `${name}_high`];

type Interval = (x: Uncertain) => readonly [low: number, high: number];

/** Of products and quotients of readings, which cannot be negative: even in the logarithm. */
const ofFactor: Interval = ({ value, u }) => {
  const spread = Math.exp((1.96 * u) / value);
  return [value / spread, value * spread];
};

/** Of differences of readings, which scatter evenly below zero too. */
const ofDifference: Interval = ({ value, u }) => [value - 1.96 * u, value + 1.96 * u];

/** 19 in 20. */
function cells(name: string, interval: Interval, x: Uncertain | undefined): Record<string, number | string> {
  const numbers = x ? [x.value, x.u, ...interval(x)] : [];
  return Object.fromEntries(withTail(name).map((column, i) => [column, numbers[i] ?? ""]));
}

/** Readings of the tank that are there: bucket test; filling time against the unit just fitted. */
function chargeOf(row: Row): Outcome<Uncertain> {
  const test = allKnown({
    tankVolumeL: reading(row, "tank_L", 0.01, 0),
    fullKPaGauge: reading(row, "tank_full_kPa_gauge", 0, 3),
    afterKPaGauge: reading(row, "tank_after_kPa_gauge", 0, 3),
    drawnL: reading(row, "drawn_L", 0.01, 0),
    altitudeM: cell(row, "altitude_m", 0),
  });
  return mapOutcome(test, ({ altitudeM, ...x }) =>
    mapOutcome(bucketTest({ ...x, atmosphericKPa: atmosphericPressureKPa(altitudeM) }), (tank) =>
      known(tank.airChargeKPaGauge),
    ),
  );
}

const read = {
  elementPressureKPaGauge: ["feed_pressure_kPa_gauge", 0, 5],
  temperatureC: ["temperature_C", 0, 0.3],
  feedMgPerL: ["feed_NaCl_mg_L", 0.01, 0.3],
  permeateLPerH: ["permeate_L_h", 0.01, 0],
  permeateMgPerL: ["permeate_mg_L", 0.01, 0.3],
  drainLPerH: ["concentrate_L_h", 0.01, 0],
} as const;

const readings = (row: Row) =>
  allKnown(
    Object.fromEntries(
      Object.entries(read).map(([key, [name, relative, absolute]]) => [
        key,
        reading(row, name, relative, absolute),
      ]),
    ) as Record<keyof typeof read, Outcome<Uncertain>>,
  );

function fitOfRow(row: Row): Outcome<UnitFit> {
  const told = allKnown({
    temperatureForm: temperatureFormOfRow(row),
    areaM2: cell(row, "area_m2", 1),
    polarisation: cell(row, "beta", 1),
    restrictorRatedKPa: cell(row, "restrictor_rated_kPa", 414),
    permeatePressureKPaGauge: cell(row, "tank_pressure_kPa_gauge", 0),
    ...(given(row, "before_filter_kPa_gauge") && {
      feedPressureKPaGauge: reading(row, "before_filter_kPa_gauge", 0, 5),
    }),
  });
  return mapOutcome(told, (unit) => mapOutcome(readings(row), (seen) => fitUnit({ ...unit, ...seen })));
}

/** The row with cells replaced; a copy would count every column as read. */
const withCells = (row: Row, cells: Readonly<Record<string, number>>): Row =>
  Object.assign(
    Object.create(row),
    Object.fromEntries(Object.entries(cells).map(([k, v]) => [k, String(v)])),
  );

const fittedRow = (row: Row, fit: UnitFit): Row =>
  withCells(row, {
    A_L_m2_h_bar: fit.waterLPerM2HBar.value,
    B_L_m2_h: fit.saltLPerM2H.value,
    restrictor_L_h: fit.restrictorRatedLPerH.value,
  });

const fittedUnit = (row: Row, fit: UnitFit) =>
  allKnown({
    unit: unitOfRow(fittedRow(row, fit)),
    at: conditionsOfRow(withCells(row, { tank_pressure_kPa_gauge: 0 })),
  });

/** Enough for how the hours answer to the readings; the hours themselves are stepped in full. */
const coarse = { segments: 6 };

/** Hours the unit fitted to these readings would need, uncertain as they are. */
function hoursOfFit(row: Row, seen: Readonly<Record<keyof typeof read, Uncertain>>): Uncertain {
  const names = Object.keys(read) as (keyof typeof read)[];
  const hours = (values: readonly number[]) => {
    const other = withCells(row, Object.fromEntries(names.map((name, i) => [read[name][0], values[i]!])));
    const filled = mapOutcome(fitOfRow(other), (fit) =>
      mapOutcome(fittedUnit(other, fit), ({ unit, at }) => filling(unit, at, coarse)),
    );
    return filled.kind === "known" ? filled.value.hours : Number.NaN;
  };
  return propagate(
    hours,
    names.map((name) => seen[name]),
  );
}

/** The filling's A over the fit's: both are uncertain, the fit through its readings. */
function byFilling(row: Row, fit: UnitFit): Outcome<Uncertain> {
  const of = allKnown({
    fitted: fittedUnit(row, fit),
    seen: readings(row),
    hours: reading(row, "fill_time_h", 0.02, 0.02),
  });
  return mapOutcome(of, ({ fitted: { unit, at }, seen, hours }) => {
    const told = hoursOfFit(row, seen);
    const u = hours.value * Math.hypot(hours.u / hours.value, told.u / told.value);
    return fillingSays(unit, at, { value: hours.value, u }).waterRatio;
  });
}

const orBlank = (outcome: Outcome<Uncertain>) => (outcome.kind === "known" ? outcome.value : undefined);

/** `tapside unit fit`: readings of one visit a row → A, B, restrictor, filter drop, air charge, with intervals. */
export const unitFitVerb: RowVerb = {
  summary:
    "A, B and restrictor of a unit from one visit's readings a row; filter drop, air charge and what the filling says where read; u and 19-in-20 intervals",
  columns: [...fitted, ...found].flatMap(withTail),
  row: (row) =>
    mapOutcome(fitOfRow(row), (fit) =>
      known({
        ...cells("A_L_m2_h_bar", ofFactor, fit.waterLPerM2HBar),
        ...cells("B_L_m2_h", ofFactor, fit.saltLPerM2H),
        ...cells("restrictor_L_h", ofFactor, fit.restrictorRatedLPerH),
        ...cells("filter_drop_found_kPa", ofDifference, fit.filterDropKPa),
        ...cells("air_charge_found_kPa_gauge", ofDifference, orBlank(chargeOf(row))),
        ...cells(
          "A_by_filling_ratio",
          ofFactor,
          given(row, "fill_time_h") ? orBlank(byFilling(row, fit)) : undefined,
        ),
      }),
    ),
};
