import { waterAtOnce } from "@tapside/assessment";
import type { SaturationPoint } from "@tapside/pictures";
import { calciteSaturationAt, type FieldReadings } from "@tapside/water";

/** Few enough that the curve follows a key; the band comes from the worker. */
const TEMPERATURES_C = [10, 40, 70, 100] as const;

/** The middle curve at once, without its band; empty when there is nothing to go by. */
export function quickCurve(readings: FieldReadings): readonly SaturationPoint[] {
  const middle = waterAtOnce(readings);
  if (middle.kind !== "known") return [];
  return TEMPERATURES_C.flatMap((temperatureC) => {
    const index = calciteSaturationAt(middle.value, temperatureC);
    return index.kind === "known" && Number.isFinite(index.value)
      ? [{ temperatureC, low: index.value, middle: index.value, high: index.value }]
      : [];
  });
}
