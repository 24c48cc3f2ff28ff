import { known, type Outcome, refused } from "@tapside/quantities";

/** Factor that takes a reading at t to 25 °C for natural waters: 0, 5, … 35 °C. */
const NATURAL_WATER_25 = [1.918, 1.643, 1.428, 1.256, 1.116, 1.0, 0.903, 0.822] as const;

/**
 * Non-linear compensation factor f25 of natural water, interpolated in the logarithm: κ25 = f25 κt.
 *
 * Source: ISO/DIN 7888 table as reproduced in an instrument manual (manualslib.de 494750, p. 35); 5 °C steps in hand.
 * Range: 0–35.9 °C, 60–1000 µS/cm.
 * Error: 0.001 at the steps, about 0.002 between them.
 *
 * @example
 * ```ts
 * import { naturalWaterFactor25 } from "@tapside/water";
 * naturalWaterFactor25(10); // => { kind: "known", value: 1.428 }
 * ```
 */
export function naturalWaterFactor25(temperatureC: number): Outcome<number> {
  if (!(temperatureC >= 0 && temperatureC <= 35.9))
    return refused("temperature-out-of-range", { temperatureC, lowC: 0, highC: 35.9 });
  const i = Math.min(Math.floor(temperatureC / 5), NATURAL_WATER_25.length - 2);
  const f = temperatureC / 5 - i;
  const low = Math.log(NATURAL_WATER_25[i]!);
  const high = Math.log(NATURAL_WATER_25[i + 1]!);
  return known(Math.exp(low + f * (high - low)));
}

/** The same to 20 °C: f20 = f25/1.116 (same table). */
export function naturalWaterFactor20(temperatureC: number): Outcome<number> {
  const factor = naturalWaterFactor25(temperatureC);
  return factor.kind === "known" ? known(factor.value / 1.116) : factor;
}

/**
 * Linear compensation factor: κref = κt/(1 + α (t − tref)).
 *
 * Source: formula in an instrument manual (manualshive 2264325, p. 16); measured natural waters α = 0.0175–0.0198
 * (Hayashi, abstract), meters usually 0.02. Error: 1–2 % at 5 and 35 °C for α = 0.02.
 *
 * @example
 * ```ts
 * import { linearFactor } from "@tapside/water";
 * linearFactor(10); // => 1.4286
 * ```
 */
export function linearFactor(temperatureC: number, perC = 0.02, referenceC = 25): number {
  return 1 / (1 + perC * (temperatureC - referenceC));
}
