import { allKnown, known, mapOutcome, type Outcome, type Uncertain } from "@tapside/quantities";
import { atmosphericPressureKPa, bucketTest, fillingSays, fitUnit } from "@tapside/reverse-osmosis";
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

/** 19 in 20; quantities that cannot be negative get their interval in the logarithm. */
function cells(name: string, x: Uncertain | undefined): Record<string, number | string> {
  const blank = Object.fromEntries(withTail(name).map((column) => [column, ""]));
  if (!x) return blank;
  const spread = x.value > 0 && x.u < x.value ? Math.exp((1.96 * x.u) / x.value) : undefined;
  return {
    [name]: x.value,
    [`${name}_u`]: x.u,
    [`${name}_low`]: spread ? x.value / spread : x.value - 1.96 * x.u,
    [`${name}_high`]: spread ? x.value * spread : x.value + 1.96 * x.u,
  };
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

function byFilling(row: Row, fit: Readonly<Record<(typeof fitted)[number], number>>): Outcome<Uncertain> {
  const asText = Object.fromEntries(fitted.map((name) => [name, String(fit[name])]));
  const of = allKnown({
    unit: unitOfRow({ ...row, ...asText }),
    at: conditionsOfRow({ ...row, tank_pressure_kPa_gauge: "0" }),
    hours: reading(row, "fill_time_h", 0.02, 0.02),
  });
  return mapOutcome(of, ({ unit, at, hours }) => fillingSays(unit, at, hours).waterRatio);
}

const orBlank = (outcome: Outcome<Uncertain>) => (outcome.kind === "known" ? outcome.value : undefined);

/** `tapside unit fit`: readings of one visit a row → A, B, restrictor, filter drop, air charge, with intervals. */
export const unitFitVerb: RowVerb = {
  summary:
    "A, B and restrictor of a unit from one visit's readings a row; filter drop, air charge and what the filling says where read; u and 19-in-20 intervals",
  columns: [...fitted, ...found].flatMap(withTail),
  row: (row) => {
    const before = given(row, "before_filter_kPa_gauge")
      ? reading(row, "before_filter_kPa_gauge", 0, 5)
      : undefined;
    const readings = allKnown({
      temperatureForm: temperatureFormOfRow(row),
      areaM2: cell(row, "area_m2", 1),
      polarisation: cell(row, "beta", 1),
      restrictorRatedKPa: cell(row, "restrictor_rated_kPa", 414),
      elementPressureKPaGauge: reading(row, "feed_pressure_kPa_gauge", 0, 5),
      permeatePressureKPaGauge: cell(row, "tank_pressure_kPa_gauge", 0),
      temperatureC: reading(row, "temperature_C", 0, 0.3),
      feedMgPerL: reading(row, "feed_NaCl_mg_L", 0.01, 0.3),
      permeateLPerH: reading(row, "permeate_L_h", 0.01, 0),
      permeateMgPerL: reading(row, "permeate_mg_L", 0.01, 0.3),
      drainLPerH: reading(row, "concentrate_L_h", 0.01, 0),
    });
    if (before && before.kind !== "known") return before;
    const feedPressure = before ? { feedPressureKPaGauge: before.value } : {};
    return mapOutcome(readings, (v) =>
      mapOutcome(fitUnit({ ...v, ...feedPressure }), (fit) =>
        known({
          ...cells("A_L_m2_h_bar", fit.waterLPerM2HBar),
          ...cells("B_L_m2_h", fit.saltLPerM2H),
          ...cells("restrictor_L_h", fit.restrictorRatedLPerH),
          ...cells("filter_drop_found_kPa", fit.filterDropKPa),
          ...cells("air_charge_found_kPa_gauge", orBlank(chargeOf(row))),
          ...cells(
            "A_by_filling_ratio",
            given(row, "fill_time_h")
              ? orBlank(
                  byFilling(row, {
                    A_L_m2_h_bar: fit.waterLPerM2HBar.value,
                    B_L_m2_h: fit.saltLPerM2H.value,
                    restrictor_L_h: fit.restrictorRatedLPerH.value,
                  }),
                )
              : undefined,
          ),
        }),
      ),
    );
  },
};
