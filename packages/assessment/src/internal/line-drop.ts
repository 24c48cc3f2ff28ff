import type { UnitFile } from "@tapside/records";
import { lineLossKPa, type Tube } from "@tapside/reverse-osmosis";
import { amountOf, type PhaseReadings } from "./amounts.ts";

/** Water where nobody read it. Common practice, no source. */
const USUAL_WATER_C = 12;

/** What lines of the record take of a flow, kPa; in water of usual warmth where nobody read it. */
export function lineDropKPa(
  tubes: readonly Tube[] | undefined,
  flowLPerH: number,
  readings: PhaseReadings,
  file: Pick<UnitFile, "instruments" | "unit">,
): number {
  if (!tubes?.length) return 0;
  const water = amountOf("feedTemperature", readings, file);
  const temperatureC = water.kind === "known" ? water.value.value : USUAL_WATER_C;
  return tubes.reduce((sum, tube) => sum + lineLossKPa(tube, flowLPerH, temperatureC), 0);
}
