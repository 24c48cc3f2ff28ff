import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import type { WaterAnalysis } from "./analysis.ts";
import { heatClosed } from "./heat.ts";
import { speciate } from "./speciate.ts";

/** Calcite saturation index of a water after closed heating to a temperature. Source, Range, Error: as `speciate`. */
export function calciteSaturationAt(water: WaterAnalysis, temperatureC: number): Outcome<number> {
  return mapOutcome(speciate(water), (solved) =>
    mapOutcome(heatClosed(solved, temperatureC), (hot) => known(hot.saturation.calcite)),
  );
}
