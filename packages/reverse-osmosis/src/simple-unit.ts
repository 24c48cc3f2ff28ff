import type { Element } from "./element.ts";
import type { Restrictor } from "./restrictor.ts";
import { usualShutOffRatio } from "./shut-off.ts";
import type { Tank } from "./tank.ts";
import { defaultTemperatureForm } from "./temperature-correction.ts";
import type { Unit } from "./unit.ts";

type Given = Pick<Element, "areaM2" | "waterLPerM2HBar" | "saltLPerM2H"> & Partial<Element>;

/**
 * A unit of one element, one rated restrictor and at most one tank, at sea level: every other part left out.
 * @example
 * ```ts
 * import { simpleUnit } from "@tapside/reverse-osmosis";
 * simpleUnit({ areaM2: 1, waterLPerM2HBar: 4, saltLPerM2H: 0.6 }, { ratedLPerH: 40, ratedKPa: 414 }).tanks.length; // => 0
 * ```
 */
export function simpleUnit(
  element: Given,
  restrictor: Restrictor | { readonly ratedLPerH: number; readonly ratedKPa: number },
  tank?: Tank,
): Unit {
  return {
    cartridges: [],
    elements: [{ polarisation: 1, temperatureForm: defaultTemperatureForm, ...element }],
    restrictor: "kind" in restrictor ? restrictor : { kind: "rated", ...restrictor },
    shutOff: { ratio: usualShutOffRatio.middle },
    tanks: tank ? [tank] : [],
    atmosphericKPa: 101.325,
  };
}
