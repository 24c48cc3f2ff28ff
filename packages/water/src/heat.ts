import type { Outcome } from "@tapside/quantities";
import type { ConservedWater } from "./analysis.ts";
import { speciateConserved } from "./speciate.ts";
import type { Water } from "./water.ts";

/**
 * Closed heating or cooling: alkalinity and total carbon are kept, pH is solved anew.
 *
 * Source: conservation of alkalinity and carbon; reference values in `reference/water-cases/heating_open.csv`.
 * Range: 0–160 °C.
 * Error: as `speciate`; nothing precipitates on the way.
 */
export function heatClosed(water: ConservedWater, temperatureC: number): Outcome<Water> {
  return speciateConserved({ ...water, temperatureC });
}
