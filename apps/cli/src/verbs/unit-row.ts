import { allKnown, known, mapOutcome, missing, type Outcome, refused } from "@tapside/quantities";
import {
  atmosphericPressureKPa,
  type Conditions,
  defaultTemperatureForm,
  isTemperatureFormId,
  type TemperatureFormId,
  type Unit,
} from "@tapside/reverse-osmosis";

export type Row = Readonly<Record<string, string>>;

/** A number of a row; `otherwise` stands in for an absent or empty cell. */
export function cell(row: Row, name: string, otherwise?: number): Outcome<number> {
  const text = row[name]?.trim() ?? "";
  if (text === "") return otherwise === undefined ? missing(name) : known(otherwise);
  const value = Number(text);
  return Number.isFinite(value) ? known(value) : refused("not-a-number", { name, text });
}

function positive(row: Row, name: string, otherwise?: number): Outcome<number> {
  return mapOutcome(cell(row, name, otherwise), (value) =>
    value > 0 ? known(value) : refused("not-positive", { name, value }),
  );
}

export function temperatureFormOfRow(row: Row): Outcome<TemperatureFormId> {
  const text = row.temperature_form?.trim() || defaultTemperatureForm;
  return isTemperatureFormId(text) ? known(text) : refused("unknown-temperature-form", { text });
}

const filters = (dropKPa: number, atLPerH: number) =>
  dropKPa > 0 ? [{ id: "filters", dropKPa, atLPerH }] : [];

/** The unit of one row. Element and restrictor must be there; every other part may be left out or blank. */
export function unitOfRow(row: Row): Outcome<Unit> {
  const given = allKnown({
    form: temperatureFormOfRow(row),
    areaM2: positive(row, "area_m2"),
    waterLPerM2HBar: positive(row, "A_L_m2_h_bar"),
    saltLPerM2H: positive(row, "B_L_m2_h"),
    polarisation: positive(row, "beta", 1),
    ratedLPerH: positive(row, "restrictor_L_h"),
    ratedKPa: positive(row, "restrictor_rated_kPa", 414),
    volumeL: cell(row, "tank_L", 0),
    airChargeKPaGauge: cell(row, "air_charge_kPa_gauge", 0),
    ratio: positive(row, "shutoff_ratio", 0.64),
    altitudeM: cell(row, "altitude_m", 0),
    dropKPa: cell(row, "filter_drop_kPa", 0),
    dropAtLPerH: positive(row, "filter_drop_at_L_h", 80),
    elements: positive(row, "elements", 1),
    tanks: cell(row, "tanks", 1),
    boosterKPa: cell(row, "booster_kPa", 0),
    boosterLPerH: positive(row, "booster_open_L_h", 200),
    boosterOffBelowKPaGauge: cell(row, "booster_off_below_kPa_gauge", 0),
    blendFraction: cell(row, "blend_fraction", 0),
    leakLPerHBar: cell(row, "seal_leak_L_h_bar", 0),
  });
  return mapOutcome(given, (v) =>
    known({
      cartridges: filters(v.dropKPa, v.dropAtLPerH),
      elements: Array.from({ length: Math.max(1, Math.round(v.elements)) }, () => ({
        areaM2: v.areaM2,
        waterLPerM2HBar: v.waterLPerM2HBar,
        saltLPerM2H: v.saltLPerM2H,
        polarisation: v.polarisation,
        temperatureForm: v.form,
        ...(v.leakLPerHBar > 0 && { leakLPerHBar: v.leakLPerHBar }),
      })),
      arrangement: row.arrangement?.trim() === "parallel" ? "parallel" : "series",
      ...(v.boosterKPa > 0 && {
        booster: {
          shutOffRiseKPa: v.boosterKPa,
          openFlowLPerH: v.boosterLPerH,
          offBelowKPaGauge: v.boosterOffBelowKPaGauge,
        },
      }),
      ...(v.blendFraction > 0 && { blendFraction: v.blendFraction }),
      restrictor: { kind: "rated", ratedLPerH: v.ratedLPerH, ratedKPa: v.ratedKPa },
      shutOff: { ratio: v.ratio },
      tanks:
        v.volumeL > 0
          ? Array.from({ length: Math.max(0, Math.round(v.tanks)) }, () => ({
              volumeL: v.volumeL,
              airChargeKPaGauge: v.airChargeKPaGauge,
            }))
          : [],
      atmosphericKPa: atmosphericPressureKPa(v.altitudeM),
    }),
  );
}

export function conditionsOfRow(row: Row): Outcome<Conditions> {
  return allKnown({
    feedPressureKPaGauge: cell(row, "feed_pressure_kPa_gauge"),
    temperatureC: cell(row, "temperature_C"),
    feedMgPerL: cell(row, "feed_NaCl_mg_L"),
    tankPressureKPaGauge: cell(row, "tank_pressure_kPa_gauge", 0),
  });
}
