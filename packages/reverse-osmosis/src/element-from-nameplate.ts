import { known, type Outcome, refused } from "@tapside/quantities";
import type { Element } from "./element.ts";
import { alongElement } from "./internal/along-element.ts";
import { channelOf } from "./internal/elements-flow.ts";
import { defaultTemperatureForm, type TemperatureFormId } from "./temperature-correction.ts";

/** What the element's label promises, at the label's own test conditions, permeate open. */
export interface Nameplate {
  readonly permeateLPerH: number;
  /** Rejection on the feed, as a fraction. */
  readonly rejection: number;
  readonly pressureKPaGauge: number;
  readonly temperatureC: number;
  readonly feedMgPerL: number;
  /** One of the two; without either a recovery of 0.15 is assumed. */
  readonly rejectLPerH?: number;
  readonly recovery?: number;
  /** Without it the area is assumed from an average test flux; it cancels out of every flow. */
  readonly areaM2?: number;
  /** Without it 1.1 is assumed. */
  readonly polarisation?: number;
  readonly temperatureForm?: TemperatureFormId;
}

const assumedFluxLPerM2H = 22;
const assumedRecovery = 0.15;
const assumedPolarisation = 1.1;

function refusal(plate: Nameplate): Outcome<Element> | undefined {
  const { permeateLPerH, rejection, pressureKPaGauge, feedMgPerL, temperatureC } = plate;
  if (!(permeateLPerH > 0 && pressureKPaGauge > 0 && feedMgPerL > 0)) return refused("nameplate-incomplete");
  if (!(rejection > 0.2 && rejection < 1)) return refused("nameplate-rejection", { rejection });
  if (!(temperatureC >= 0 && temperatureC <= 45))
    return refused("temperature-out-of-range", { temperatureC });
  return undefined;
}

function feedFlow(plate: Nameplate): number {
  if (plate.rejectLPerH !== undefined) return plate.permeateLPerH + plate.rejectLPerH;
  return plate.permeateLPerH / (plate.recovery ?? assumedRecovery);
}

function startingElement(plate: Nameplate): Element {
  const areaM2 = plate.areaM2 ?? plate.permeateLPerH / assumedFluxLPerM2H;
  const flux = plate.permeateLPerH / areaM2;
  const assumed: string[] = [];
  if (plate.areaM2 === undefined) assumed.push("area");
  if (plate.polarisation === undefined) assumed.push("polarisation");
  if (plate.rejectLPerH === undefined && plate.recovery === undefined) assumed.push("recovery");
  return {
    areaM2,
    waterLPerM2HBar: flux / (plate.pressureKPaGauge / 100),
    saltLPerM2H: (flux * (1 - plate.rejection)) / plate.rejection,
    polarisation: plate.polarisation ?? assumedPolarisation,
    temperatureForm: plate.temperatureForm ?? defaultTemperatureForm,
    assumed,
  };
}

/**
 * The element's A and B from its own label, so that the model gives the label's flow and rejection at the label's conditions.
 *
 * Formula: A and B scaled in turn until the stepped element returns flow and permeate concentration
 * Source: A = Q/(S·NDP), B = J(1 − R)/R at the wall, solution–diffusion.
 * Range: rejection 20 % to below 100 %, recovery below 0.9.
 * Error: labels are averages; single elements scatter about ±15 % in flow (common practice).
 * @example
 * ```ts
 * import { elementFromNameplate } from "@tapside/reverse-osmosis";
 * const element = elementFromNameplate({
 *   permeateLPerH: 31.8, rejectLPerH: 60, rejection: 0.943, pressureKPaGauge: 414, temperatureC: 25, feedMgPerL: 500, areaM2: 2.2,
 * });
 * element.kind === "known" ? element.value.waterLPerM2HBar : 0; // => 4
 * ```
 */
export function elementFromNameplate(plate: Nameplate): Outcome<Element> {
  const no = refusal(plate);
  if (no) return no;
  const feedLPerH = feedFlow(plate);
  if (!(feedLPerH > plate.permeateLPerH * 1.1)) return refused("nameplate-recovery", { feedLPerH });
  const targetMgPerL = plate.feedMgPerL * (1 - plate.rejection);
  let element = startingElement(plate);
  for (let n = 0; n < 200; n++) {
    const channel = channelOf(element, plate.temperatureC, 20);
    const end = alongElement(channel)(feedLPerH, plate.feedMgPerL, plate.pressureKPaGauge);
    const water = plate.permeateLPerH / end.permeateLPerH;
    const salt = targetMgPerL / (end.permeateSaltMgPerH / end.permeateLPerH);
    if (!(Number.isFinite(water) && Number.isFinite(salt))) break;
    if (Math.abs(water - 1) < 1e-10 && Math.abs(salt - 1) < 1e-10) return known(element);
    element = {
      ...element,
      waterLPerM2HBar: element.waterLPerM2HBar * Math.min(2, Math.max(0.5, water)),
      saltLPerM2H: element.saltLPerM2H * Math.min(2, Math.max(0.5, salt * water)),
    };
  }
  return refused("nameplate-contradictory", { feedLPerH });
}
