import { known, missing, type Outcome, refused, type Uncertain } from "@tapside/quantities";
import { type IndexPoint, indexSide, propagateSides, type UncertainInputs } from "./internal/index-side.ts";
import { type DriveInputs, driveOf } from "./internal/standard-indices.ts";
import { defaultTemperatureForm, type TemperatureFormId } from "./temperature-correction.ts";

/** One set of readings taken together; `u` is one standard uncertainty. */
export interface StandardReadings {
  readonly permeateLPerH?: Uncertain | undefined;
  readonly drainLPerH?: Uncertain | undefined;
  /** After the filters, at the element. */
  readonly membranePressureKPaGauge?: Uncertain | undefined;
  readonly temperatureC?: Uncertain | undefined;
  /** Dissolved solids as sodium chloride equivalent, both on one scale. */
  readonly feedMgPerL?: Uncertain | undefined;
  readonly permeateMgPerL?: Uncertain | undefined;
  /** 0 with the permeate to waste. */
  readonly permeatePressureKPaGauge?: Uncertain | undefined;
  readonly vesselDropKPa?: Uncertain | undefined;
  /** false = taken at the tank or tap: not judgeable. */
  readonly permeateToWaste?: boolean;
  /** false = first water after standby: not judgeable. */
  readonly firstWaterDiscarded?: boolean;
  /** Form under which these readings were standardised before, when they come from history. */
  readonly standardisedWith?: TemperatureFormId;
}

export interface Standardised {
  /** Water permeability over that of the reference: 1 = unchanged, below = fouled or scaled, above = damaged. */
  readonly waterRatio: Uncertain;
  /** Salt passage constant over that of the reference: 1 = unchanged, above = worse. */
  readonly saltRatio: Uncertain;
  /** Permeate flow this element would give at the reference's own conditions, L/h. */
  readonly permeateAtReferenceLPerH: Uncertain;
  /** Salt passage this element would have at the reference's own conditions, as a fraction. */
  readonly saltPassageAtReference: Uncertain;
  readonly temperatureForm: TemperatureFormId;
  readonly saltTemperatureForm: "1.06^(T-25)";
}

const required = [
  "permeateLPerH",
  "drainLPerH",
  "membranePressureKPaGauge",
  "temperatureC",
  "feedMgPerL",
  "permeateMgPerL",
] as const;

const exactly = (value: number): Uncertain => ({ value, u: 0 });

function inputsOf(readings: StandardReadings): UncertainInputs {
  return {
    permeateLPerH: readings.permeateLPerH!,
    drainLPerH: readings.drainLPerH!,
    membranePressureKPaGauge: readings.membranePressureKPaGauge!,
    temperatureC: readings.temperatureC!,
    feedMgPerL: readings.feedMgPerL!,
    permeateMgPerL: readings.permeateMgPerL!,
    permeatePressureKPaGauge: readings.permeatePressureKPaGauge ?? exactly(0),
    vesselDropKPa: readings.vesselDropKPa ?? exactly(0),
  };
}

/** Why one set of readings cannot be judged; undefined when it can. */
function notJudgeable(readings: StandardReadings): Outcome<never> | undefined {
  if (readings.permeateToWaste === false) return refused("permeate-not-to-waste");
  if (readings.firstWaterDiscarded === false) return refused("first-water-not-discarded");
  const absent = required.filter((name) => readings[name] === undefined);
  if (absent.length > 0) return missing(...absent);
  const value = (name: (typeof required)[number]) => readings[name]!.value;
  for (const name of ["permeateLPerH", "drainLPerH", "feedMgPerL"] as const)
    if (!(value(name) > 0)) return refused("not-positive", { name, value: value(name) });
  const temperatureC = value("temperatureC");
  if (!(temperatureC >= 1 && temperatureC <= 45))
    return refused("temperature-out-of-range", { temperatureC });
  if (!(value("permeateMgPerL") >= 0 && value("permeateMgPerL") < value("feedMgPerL")))
    return refused("permeate-not-below-feed", { permeateMgPerL: value("permeateMgPerL") });
  return undefined;
}

const plainValues = (inputs: UncertainInputs): DriveInputs =>
  Object.fromEntries(Object.entries(inputs).map(([k, v]) => [k, v.value])) as unknown as DriveInputs;

/**
 * Permeate flow and salt passage of one set of readings against another (label, commissioning, last year), both brought to the
 * same conditions.
 *
 * Formula: Q/(NDP·TCF) over the same of the reference, NDP = Pf − ΔP/2 − Pp − (π_fb − π_p), Cfb log mean;
 * Q·Cp/(STCF·Cfb) over the same of the reference
 * Source: ASTM D4516-19a, 6.1 (flow, through a public guide); the salt relation follows from solution–diffusion.
 * Range: high rejection, no significant leak, 1 to 45 °C, permeate to waste, first water discarded.
 * Error: the temperature form (13 % at 10 °C between forms); uncertainties of the readings are carried to first order.
 * @example
 * ```ts
 * import { standardise } from "@tapside/reverse-osmosis";
 * const reading = (permeateLPerH: number) => ({
 *   permeateLPerH: { value: permeateLPerH, u: 0.1 }, drainLPerH: { value: 60, u: 0.5 }, membranePressureKPaGauge: { value: 414, u: 5 },
 *   temperatureC: { value: 25, u: 0.3 }, feedMgPerL: { value: 500, u: 5 }, permeateMgPerL: { value: 28, u: 1 },
 * });
 * standardise(reading(31.8), reading(31.8)).kind; // => "known"
 * standardise({ ...reading(20), permeateToWaste: false }, reading(31.8)); // => { "kind": "refused", "code": "permeate-not-to-waste", "detail": {} }
 * ```
 */
export function standardise(
  readings: StandardReadings,
  reference: StandardReadings,
  options: { readonly temperatureForm?: TemperatureFormId } = {},
): Outcome<Standardised> {
  const form = options.temperatureForm ?? defaultTemperatureForm;
  for (const set of [readings, reference]) {
    const no = notJudgeable(set);
    if (no) return no;
    if (set.standardisedWith !== undefined && set.standardisedWith !== form)
      return refused("mixed-temperature-forms", { one: set.standardisedWith, other: form });
  }
  const now = inputsOf(readings);
  const then = inputsOf(reference);
  for (const inputs of [now, then]) {
    const driveKPa = driveOf(plainValues(inputs));
    if (!(driveKPa > 10)) return refused("no-net-driving-pressure", { driveKPa });
  }
  return known(ratios(now, then, form));
}

/** Ratios with uncertainty: both sets' readings are taken as uncorrelated. */
function ratios(
  readings: UncertainInputs,
  reference: UncertainInputs,
  form: TemperatureFormId,
): Standardised {
  const now = indexSide(readings, form);
  const then = indexSide(reference, form);
  const of = (f: (n: IndexPoint, t: IndexPoint) => number) => propagateSides(f, now, then);
  const water = (n: IndexPoint, t: IndexPoint) => n.water / t.water;
  const salt = (n: IndexPoint, t: IndexPoint) => (t.values.permeateMgPerL > 0 ? n.salt / t.salt : Number.NaN);
  const passage = (n: IndexPoint, t: IndexPoint) =>
    (n.salt / t.salt) * (t.values.permeateMgPerL / t.values.feedMgPerL);
  return {
    waterRatio: of(water),
    saltRatio: of(salt),
    permeateAtReferenceLPerH: of((n, t) => water(n, t) * t.values.permeateLPerH),
    saltPassageAtReference: of(passage),
    temperatureForm: form,
    saltTemperatureForm: "1.06^(T-25)",
  };
}
