import { type Element, elementFromNameplate } from "@tapside/reverse-osmosis";

/** Nameplates of our own at 4.14 bar, 25 °C, 500 mg/L NaCl. */
export const PLATES = {
  large: { permeateLPerH: 31.8, rejectLPerH: 60, rejection: 0.943, areaM2: 2.2 },
  middle: { permeateLPerH: 22.8, rejectLPerH: 45, rejection: 0.946, areaM2: 1.5 },
  small: { permeateLPerH: 17.9, rejectLPerH: 35, rejection: 0.951, areaM2: 1.1 },
} as const;

export const TEST = { pressureKPaGauge: 414, temperatureC: 25, feedMgPerL: 500 } as const;

export type PlateId = keyof typeof PLATES;

/** The element of a nameplate. */
export function elementOf(plate: PlateId): Element {
  const element = elementFromNameplate({ ...PLATES[plate], ...TEST });
  if (element.kind !== "known") throw new Error(`no element for ${plate}`);
  return element.value;
}
