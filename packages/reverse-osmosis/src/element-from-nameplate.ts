import { known, type Outcome, refused } from "@tapside/quantities";
import type { Element } from "./element.ts";
import { matchedElement } from "./internal/matched-element.ts";
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
 * Formula: A and B moved together until the stepped element returns flow and permeate concentration
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
  const element = matchedElement(startingElement(plate), {
    feedLPerH,
    feedMgPerL: plate.feedMgPerL,
    driveKPa: plate.pressureKPaGauge,
    temperatureC: plate.temperatureC,
    permeateLPerH: plate.permeateLPerH,
    permeateMgPerL: plate.feedMgPerL * (1 - plate.rejection),
  });
  if (element) return known(element);
  return refused("nameplate-contradictory", { feedLPerH });
}
