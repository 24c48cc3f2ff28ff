import { logMeanFactor } from "../log-mean-factor.ts";
import { naclOsmoticPressureKPa } from "../nacl-osmotic-pressure.ts";
import { netDrivingPressure } from "../net-driving-pressure.ts";
import { saltTemperatureFactor } from "../salt-temperature-factor.ts";
import { type TemperatureFormId, temperatureForms } from "../temperature-correction.ts";

export interface DriveInputs {
  readonly permeateLPerH: number;
  readonly drainLPerH: number;
  readonly membranePressureKPaGauge: number;
  readonly temperatureC: number;
  readonly feedMgPerL: number;
  readonly permeateMgPerL: number;
  readonly permeatePressureKPaGauge: number;
  readonly vesselDropKPa: number;
}

const feedBrineMgPerL = (x: DriveInputs) =>
  x.feedMgPerL * logMeanFactor(x.permeateLPerH / (x.permeateLPerH + x.drainLPerH));

/** Net driving pressure of the standard: Pf − ΔP/2 − Pp − (π_fb − π_p), kPa. */
export function driveOf(x: DriveInputs): number {
  return netDrivingPressure({
    feed: x.membranePressureKPaGauge,
    vesselDrop: x.vesselDropKPa,
    permeate: x.permeatePressureKPaGauge,
    osmoticFeedBrine: naclOsmoticPressureKPa(feedBrineMgPerL(x), x.temperatureC),
    osmoticPermeate: naclOsmoticPressureKPa(Math.max(0, x.permeateMgPerL), x.temperatureC),
  });
}

/** Proportional to A: permeate flow per net driving pressure at 25 °C. */
export const waterIndex = (x: DriveInputs, form: TemperatureFormId): number =>
  x.permeateLPerH / (driveOf(x) * temperatureForms[form].factor(x.temperatureC));

/** Proportional to B: salt flow per concentration difference at 25 °C. */
export const saltIndex = (x: DriveInputs): number =>
  (x.permeateLPerH * x.permeateMgPerL) /
  ((feedBrineMgPerL(x) - x.permeateMgPerL) * saltTemperatureFactor(x.temperatureC));
