import { known, type Outcome } from "@tapside/quantities";
import {
  atmosphericPressureKPa,
  type Conditions,
  defaultTemperatureForm,
  type TemperatureFormId,
  temperatureForms,
  type Unit,
  usualPermeatePump,
  usualShutOffRatio,
  usualShutOffRatioWithPump,
} from "@tapside/reverse-osmosis";
import {
  all,
  count,
  mapReader,
  notNegative,
  number,
  optionalPositive,
  positive,
  type Reader,
  share,
  word,
} from "./reader.ts";
import { linesOfRow, restrictorOfRow } from "./unit-parts-row.ts";

/** What a fit finds: the element's two coefficients and the restrictor's flow at its rated pressure. */
export interface FoundFigures {
  readonly waterLPerM2HBar: number;
  readonly saltLPerM2H: number;
  readonly ratedLPerH: number;
}

const elementFigures: Reader<Omit<FoundFigures, "ratedLPerH">> = all({
  waterLPerM2HBar: positive("A_L_m2_h_bar"),
  saltLPerM2H: positive("B_L_m2_h"),
});

/** Everything of a unit but its area and the figures a fit finds; all may be left out or blank. */
const otherFigures = {
  polarisation: positive("beta", 1),
  ratedKPa: positive("restrictor_rated_kPa", 414),
  form: word(
    "temperature_form",
    Object.keys(temperatureForms) as TemperatureFormId[],
    defaultTemperatureForm,
  ),
  altitudeM: number("altitude_m", 0),
  volumeL: notNegative("tank_L", 0),
  airChargeKPaGauge: notNegative("air_charge_kPa_gauge", 0),
  tanks: count("tanks", 1),
  /** Not said: as is usual, and with a permeate pump another is. */
  ratio: optionalPositive("shutoff_ratio"),
  dropKPa: notNegative("filter_drop_kPa", 0),
  dropAtLPerH: positive("filter_drop_at_L_h", 80),
  elements: count("elements", 1),
  arrangement: word("arrangement", ["series", "parallel"], "series"),
  boosterKPa: notNegative("booster_kPa", 0),
  boosterLPerH: positive("booster_open_L_h", 200),
  boosterOffBelowKPaGauge: notNegative("booster_off_below_kPa_gauge", 0),
  blendFraction: notNegative("blend_fraction", 0),
  permeatePump: word("permeate_pump", ["no", "yes", "stuck"], "no"),
  strokeRatio: positive("pump_stroke_ratio", usualPermeatePump.strokeRatio),
  pumpLossKPa: notNegative("pump_loss_kPa", usualPermeatePump.lossKPa),
  pumpSlip: share("pump_slip", usualPermeatePump.slip),
  pumpInletKPa: notNegative("pump_inlet_kPa", usualPermeatePump.inletKPa),
  leakLPerHBar: notNegative("seal_leak_L_h_bar", 0),
};

type ReadBy<R> = { readonly [K in keyof R]: R[K] extends Reader<infer T> ? T : never };
/** What a row says of a unit beside the figures a fit finds. */
export type OtherFigures = ReadBy<typeof otherFigures> & { readonly areaM2: number };

/** For a fit: without an area, A and B are those of the whole element. */
export const figuresOfFit: Reader<OtherFigures> = all({ ...otherFigures, areaM2: positive("area_m2", 1) });

const elementOf = (found: FoundFigures, v: OtherFigures) => ({
  areaM2: v.areaM2,
  waterLPerM2HBar: found.waterLPerM2HBar,
  saltLPerM2H: found.saltLPerM2H,
  polarisation: v.polarisation,
  temperatureForm: v.form,
  ...(v.leakLPerHBar > 0 && { leakLPerHBar: v.leakLPerHBar }),
});

const tankOf = ({ volumeL, airChargeKPaGauge }: OtherFigures) => ({ volumeL, airChargeKPaGauge });

const boosterOf = (v: OtherFigures) => ({
  shutOffRiseKPa: v.boosterKPa,
  openFlowLPerH: v.boosterLPerH,
  offBelowKPaGauge: v.boosterOffBelowKPaGauge,
});

/** The permeate pump of a row, or nothing. */
const permeatePumpOf = (v: OtherFigures): Pick<Unit, "permeatePump"> =>
  v.permeatePump === "no"
    ? {}
    : {
        permeatePump: {
          strokeRatio: v.strokeRatio,
          lossKPa: v.pumpLossKPa,
          slip: v.pumpSlip,
          inletKPa: v.pumpInletKPa,
          ...(v.permeatePump === "stuck" && { stuck: true }),
        },
      };

const usualRatio = (v: OtherFigures): number =>
  v.permeatePump === "no" ? usualShutOffRatio.middle : usualShutOffRatioWithPump.middle;

const times = <T>(howMany: number, one: T): T[] => Array.from({ length: howMany }, () => one);

/** Filters and booster of a row. */
export const partsBeforeElement = (v: OtherFigures): Pick<Unit, "cartridges" | "booster"> => ({
  cartridges: v.dropKPa > 0 ? [{ id: "filters", dropKPa: v.dropKPa, atLPerH: v.dropAtLPerH }] : [],
  ...(v.boosterKPa > 0 && { booster: boosterOf(v) }),
});

/** The unit of what was found and what else is told of it. */
export const unitFrom = (found: FoundFigures, v: OtherFigures): Unit => ({
  ...partsBeforeElement(v),
  ...permeatePumpOf(v),
  elements: times(Math.max(1, v.elements), elementOf(found, v)),
  arrangement: v.arrangement,
  ...(v.blendFraction > 0 && { blendFraction: v.blendFraction }),
  restrictor: { kind: "rated", ratedLPerH: found.ratedLPerH, ratedKPa: v.ratedKPa },
  shutOff: { ratio: v.ratio ?? usualRatio(v) },
  tanks: v.volumeL > 0 ? times(v.tanks, tankOf(v)) : [],
  atmosphericKPa: atmosphericPressureKPa(v.altitudeM),
});

/** The unit of one row. Element and restrictor must be there; every other part may be left out or blank. */
export const unitOfRow: Reader<Unit> = mapReader(
  all({
    element: elementFigures,
    restrictor: restrictorOfRow,
    lines: linesOfRow,
    other: all<OtherFigures>({ ...otherFigures, areaM2: positive("area_m2") }),
  }),
  ({ element, restrictor, lines, other }): Outcome<Unit> =>
    known({ ...unitFrom({ ...element, ratedLPerH: 0 }, other), ...lines, restrictor }),
);

const feed = {
  feedPressureKPaGauge: number("feed_pressure_kPa_gauge"),
  feedMgPerL: number("feed_NaCl_mg_L"),
};
const temperatureC = number("temperature_C");

/** Feed and tank as they stand. */
export const conditionsOfRow: Reader<Conditions> = all({
  ...feed,
  temperatureC,
  tankPressureKPaGauge: number("tank_pressure_kPa_gauge", 0),
});

/** The feed with an empty tank, whatever the tank stood at. */
export const emptyTankOfRow: Reader<Conditions> = mapReader(all({ ...feed, temperatureC }), (given) =>
  known({ ...given, tankPressureKPaGauge: 0 }),
);

/** The feed of any season, with an empty tank. */
export const feedOfRow: Reader<Omit<Conditions, "temperatureC">> = mapReader(all(feed), (given) =>
  known({ ...given, tankPressureKPaGauge: 0 }),
);

/** The water's warmth in winter and in summer, °C. */
export const seasonsOfRow = all({ winter: number("winter_C", 6), summer: number("summer_C", 20) });
