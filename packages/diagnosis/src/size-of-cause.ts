import type { CauseId } from "./causes.ts";
import type { CauseFit } from "./fit-cause.ts";
import { type Hidden, soundHidden } from "./hidden.ts";
import type { Scene } from "./scene.ts";

/** What the size of a cause is told in. */
export type Measure =
  /** Share of the water a sound element would pass. */
  | "waterPasses"
  /** Times the salt a sound element would pass. */
  | "saltPasses"
  /** Share of the flow the restrictor or drain line should pass. */
  | "drainPasses"
  /** Times the pressure loss of a clean cartridge. */
  | "filterLoss"
  | "feedPressure"
  | "temperature"
  | "airCharge"
  /** Share of the delivered water that goes past the element. */
  | "pastElement"
  /** Share of the chlorine that passes the carbon. */
  | "chlorinePasses"
  | "hardness"
  | "feedSolids"
  /** What is shown over what is there. */
  | "meterShows"
  | "gaugeShows"
  /** First draw over the water behind it. */
  | "firstDraw"
  /** Wanted a day, L. */
  | "dailyLitres";

/** One measure of a size, in its coherent unit (kPa gauge, °C, mg/L, L, or a ratio), with its 95 % interval. */
export interface Measured {
  readonly measure: Measure;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A share with a wider standard deviation says nothing about the size. */
export const SIZE_KNOWN_WITHIN = 0.35;

export interface CauseSize {
  readonly measures: readonly Measured[];
  /** Of the sizes met: from 0 (mild) to 1 (severe), with one standard deviation. */
  readonly share: number;
  readonly uShare: number;
}

type TellBeside = (found: Hidden, sound: Hidden) => number | undefined;

/** What may be near or below zero, so that its interval is as wide below as above; ratios and amounts are wide by factors. */
const EVEN: readonly Measure[] = ["feedPressure", "temperature", "airCharge"];

const element = (h: Hidden) => h.situation.unit.elements[0];
const ratio = (found: number | undefined, sound: number | undefined) =>
  found !== undefined && sound ? found / sound : undefined;

const TELL: Readonly<Record<Measure, TellBeside>> = {
  waterPasses: (h, s) => ratio(element(h)?.waterLPerM2HBar, element(s)?.waterLPerM2HBar),
  saltPasses: (h, s) => ratio(element(h)?.saltLPerM2H, element(s)?.saltLPerM2H),
  drainPasses: ({ situation: { unit } }) => (unit.restrictor.scale ?? 1) * (unit.drainLineShare ?? 1),
  filterLoss: (h) => h.situation.unit.cartridges[0]?.clogging ?? 1,
  feedPressure: (h) => h.situation.conditions.feedPressureKPaGauge,
  temperature: (h) => h.situation.conditions.temperatureC,
  airCharge: (h) => h.situation.unit.tanks[0]?.airChargeKPaGauge,
  pastElement: (h) => h.situation.unit.blendFraction,
  chlorinePasses: (h) => h.carbonPass,
  hardness: (h) => h.hardnessMgPerL,
  feedSolids: (h) => h.situation.conditions.feedMgPerL,
  meterShows: (h) => h.tdsGain,
  gaugeShows: (h) => h.gaugeGain,
  firstDraw: (h) => h.firstDrawFactor,
  dailyLitres: (h) => h.dailyLitres,
};

const MEASURES: Readonly<Partial<Record<CauseId, readonly Measure[]>>> = {
  fouledMembrane: ["waterPasses"],
  scaledMembrane: ["waterPasses", "saltPasses"],
  oxidisedMembrane: ["waterPasses", "saltPasses"],
  brineSeal: ["waterPasses"],
  restrictorBlocked: ["drainPasses"],
  drainLineBlocked: ["drainPasses"],
  restrictorTooBig: ["drainPasses"],
  preFilterClogged: ["filterLoss"],
  lowFeedPressure: ["feedPressure"],
  coldWater: ["temperature"],
  airChargeLow: ["airCharge"],
  airChargeHigh: ["airCharge"],
  bypassOpen: ["pastElement"],
  tdsMeterOff: ["meterShows"],
  meterScaleSlip: ["meterShows"],
  gaugeOff: ["gaugeShows"],
  sampleAfterStandby: ["firstDraw"],
  carbonExhausted: ["chlorinePasses"],
  softenerFailed: ["hardness"],
  feedSolidsChanged: ["feedSolids"],
  demandAboveCapacity: ["dailyLitres"],
};

/**
 * The 95 % interval of a measure with standard deviation `u`.
 *
 * Formula: value ± 1.96 u; of ratios and amounts value · e^(±1.96 u / value), never below zero
 * Source: law of propagation of uncertainty, textbook.
 * Range: u not much above the value; beyond, the interval only says that the size is not known.
 * Error: linear; a bound of the cause's own range is not seen.
 */
function intervalOf(measure: Measure, value: number, u: number): Measured {
  const half = 1.96 * u;
  if (EVEN.includes(measure) || value <= 0) return { measure, value, low: value - half, high: value + half };
  const factor = Math.exp(Math.min(half / value, 5));
  return { measure, value, low: value / factor, high: value * factor };
}

/** What a truth has of a measure, told beside a sound unit. */
export const toldOf = (measure: Measure, truth: Hidden, sound: Hidden): number | undefined =>
  TELL[measure](truth, sound);

/** How large a cause of a fit is, in what a technician would name. Undefined: the fit is of other causes, or the cause has no size. */
export function sizeOfCause(cause: CauseId, fit: CauseFit, scene: Scene): CauseSize | undefined {
  const at = fit.causes.indexOf(cause);
  if (at < 0 || cause === "healthy") return undefined;
  const sound = soundHidden(scene);
  const measures = (MEASURES[cause] ?? []).flatMap((measure) => {
    const tell = (truth: Hidden) => toldOf(measure, truth, sound);
    const value = tell(fit.truth);
    return value !== undefined && Number.isFinite(value) ? [intervalOf(measure, value, fit.uOf(tell))] : [];
  });
  return { measures, share: fit.shares[at]!, uShare: fit.uShares[at]! };
}
