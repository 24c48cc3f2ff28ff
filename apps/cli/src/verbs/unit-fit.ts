import { allKnown, known, mapOutcome } from "@tapside/quantities";
import { fitUnit } from "@tapside/reverse-osmosis";
import type { RowVerb } from "./row-verb.ts";
import { cell, type Row, temperatureFormOfRow } from "./unit-row.ts";

/** A reading with its standard uncertainty from `<name>_u`, or a usual one. */
const reading = (row: Row, name: string, relative: number, absolute: number) =>
  mapOutcome(cell(row, name), (value) =>
    mapOutcome(cell(row, `${name}_u`, Math.hypot(relative * value, absolute)), (u) => known({ value, u })),
  );

/** `tapside unit fit`: readings of one visit a row → A, B, restrictor, with standard uncertainties. */
export const unitFitVerb: RowVerb = {
  summary: "A, B and restrictor of a unit from one visit's readings a row, with standard uncertainties",
  columns: ["A_L_m2_h_bar", "A_L_m2_h_bar_u", "B_L_m2_h", "B_L_m2_h_u", "restrictor_L_h", "restrictor_L_h_u"],
  row: (row) => {
    const given = allKnown({
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
    return mapOutcome(given, (v) =>
      mapOutcome(fitUnit(v), (fit) =>
        known({
          A_L_m2_h_bar: fit.waterLPerM2HBar.value,
          A_L_m2_h_bar_u: fit.waterLPerM2HBar.u,
          B_L_m2_h: fit.saltLPerM2H.value,
          B_L_m2_h_u: fit.saltLPerM2H.u,
          restrictor_L_h: fit.restrictorRatedLPerH.value,
          restrictor_L_h_u: fit.restrictorRatedLPerH.u,
        }),
      ),
    );
  },
};
