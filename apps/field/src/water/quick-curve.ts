import { waterAtOnce } from "@tapside/assessment";
import type { SaturationPoint } from "@tapside/pictures";
import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import { calciteSaturationAt, type FieldReadings } from "@tapside/water";

/** Few enough that the curve follows a key; the band comes from the worker. */
const TEMPERATURES_C = [10, 40, 70, 100] as const;

/** The middle curve at once, without its band; empty where no lime is in the water. */
export const quickCurve = (readings: FieldReadings): Outcome<readonly SaturationPoint[]> =>
  mapOutcome(waterAtOnce(readings), (middle) =>
    known(
      TEMPERATURES_C.flatMap((temperatureC) => {
        const index = calciteSaturationAt(middle, temperatureC);
        return index.kind === "known" && Number.isFinite(index.value)
          ? [{ temperatureC, low: index.value, middle: index.value, high: index.value }]
          : [];
      }),
    ),
  );
