import { quantile } from "@tapside/quantities";
import { expect, it } from "vitest";
import { centralWater, completeWater, type FieldReadings } from "./complete.ts";
import { seededUniform } from "./internal/seeded.ts";
import { calciteSaturationAt } from "./saturation-at.ts";

/** No outside source: the quick water must be a fair stand-in for the samples it stands in for. */
const READINGS: readonly FieldReadings[] = [
  { ec25UsPerCm: 455, pH: 7.6, alkalinityMgPerLCaCO3: 140, ions: { Ca: 60 } },
  { ec25UsPerCm: 455 },
  { tdsMgPerL: 200, pH: 7.2 },
  { hardnessMgPerLCaCO3: 150, alkalinityMgPerLCaCO3: 120 },
  { ec25UsPerCm: 20, pH: 6.2 },
];
const index = (water: Parameters<typeof calciteSaturationAt>[0], temperatureC: number) => {
  const outcome = calciteSaturationAt(water, temperatureC);
  return outcome.kind === "known" ? outcome.value : Number.NaN;
};

it.each(READINGS)("the water at once lies in the middle half of the samples, %j", (readings) => {
  const quick = centralWater(readings);
  const samples = completeWater(readings, { random: seededUniform(4), samples: 400 });
  if (quick.kind !== "known" || samples.kind !== "known") throw new Error("refused");
  for (const temperatureC of [10, 100]) {
    const drawn = samples.value.map((water) => index(water, temperatureC)).filter(Number.isFinite);
    const at = index(quick.value, temperatureC);
    expect(at).toBeGreaterThan(quantile(drawn, 0.25));
    expect(at).toBeLessThan(quantile(drawn, 0.75));
  }
});
it("refuses a reading that is none", () => {
  expect(centralWater({ ec25UsPerCm: -3 })).toMatchObject({ code: "not-a-reading" });
});
