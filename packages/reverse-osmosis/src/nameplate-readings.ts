import type { Uncertain } from "@tapside/quantities";
import type { Nameplate } from "./element-from-nameplate.ts";
import type { StandardReadings } from "./standardise.ts";

/** A label as if it were a set of readings at its own test conditions, so that `standardise` can use it as reference. */
export function nameplateReadings(plate: Nameplate): StandardReadings {
  const exactly = (value: number): Uncertain => ({ value, u: 0 });
  const reject = plate.rejectLPerH ?? plate.permeateLPerH * (1 / (plate.recovery ?? 0.15) - 1);
  return {
    permeateLPerH: exactly(plate.permeateLPerH),
    drainLPerH: exactly(reject),
    membranePressureKPaGauge: exactly(plate.pressureKPaGauge),
    temperatureC: exactly(plate.temperatureC),
    feedMgPerL: exactly(plate.feedMgPerL),
    permeateMgPerL: exactly(plate.feedMgPerL * (1 - plate.rejection)),
  };
}
