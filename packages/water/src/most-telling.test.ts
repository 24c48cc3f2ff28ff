import { quantile } from "@tapside/quantities";
import { expect, it } from "vitest";
import type { WaterAnalysis } from "./analysis.ts";
import { completeWater, type FieldReadings } from "./complete.ts";
import { hardnessFromIons } from "./hardness.ts";
import { seededUniform } from "./internal/seeded.ts";
import { mostTellingReadings } from "./most-telling.ts";
import { calciteSaturationAt } from "./saturation-at.ts";

function samplesOf(given: FieldReadings, seed: number, samples: number): readonly WaterAnalysis[] {
  const outcome = completeWater(given, { random: seededUniform(seed), samples });
  if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
  return outcome.value;
}

const asked = (given: FieldReadings, seed: number, samples: number) => {
  const telling = mostTellingReadings(samplesOf(given, seed, samples), given);
  if (telling.kind !== "known") throw new Error(JSON.stringify(telling));
  return telling.value;
};

/** SI moves by one for each unit of pH (definition of the index), so an unread pH tells most beside hardness and alkalinity. */
it("asks for pH when hardness and alkalinity are read and pH is not", () => {
  const given = { temperatureC: 15, hardnessMgPerLCaCO3: 200, alkalinityMgPerLCaCO3: 150, ec25UsPerCm: 450 };
  expect(asked(given, 4, 100)[0]!.reading).toBe("pH");
});

const withReading = (given: FieldReadings, reading: string, water: WaterAnalysis): FieldReadings => {
  if (reading === "pH" || reading === "temperatureC" || reading === "alkalinityMgPerLCaCO3")
    return { ...given, [reading]: water[reading] };
  if (reading === "hardnessMgPerLCaCO3")
    return { ...given, hardnessMgPerLCaCO3: hardnessFromIons(water.ions.Ca ?? 0, water.ions.Mg ?? 0) };
  return { ...given, ions: { ...given.ions, [reading]: water.ions[reading as "Ca"] ?? 0 } };
};

function widthOf(given: FieldReadings): number {
  const index = samplesOf(given, 5, 80)
    .map((water) => calciteSaturationAt(water, 90))
    .flatMap((one) => (one.kind === "known" && Number.isFinite(one.value) ? [one.value] : []));
  return quantile(index, 0.95) - quantile(index, 0.05);
}

/** Mean width that is left when a reading is taken at each of some waters that the readings so far leave possible. */
function leftBy(given: FieldReadings, reading: string, waters: readonly WaterAnalysis[]): number {
  const widths = waters.map((water) => widthOf(withReading(given, reading, water)));
  return widths.reduce((sum, width) => sum + width, 0) / widths.length;
}

/**
 * Held against what it stands for: each reading taken in turn at waters drawn apart from those that chose it. 120 and 40
 * samples are what the water page and a visit's judgement draw. 1.15: eight waters a reading leave their mean about so uncertain.
 */
it.each<[string, FieldReadings]>([
  ["conductivity", { ec25UsPerCm: 450 }],
  ["conductivity and pH", { ec25UsPerCm: 450, pH: 7.4, temperatureC: 14 }],
  ["hardness and pH", { hardnessMgPerLCaCO3: 180, pH: 7.7, temperatureC: 12 }],
  ["meters and hardness", { ec25UsPerCm: 900, pH: 7.1, temperatureC: 20, hardnessMgPerLCaCO3: 120 }],
])("names a reading that leaves the index about as narrow as the best would, from %s", (_, given) => {
  const waters = samplesOf(given, 11, 200).filter((__, i) => i % 25 === 12);
  const taken = Object.keys(given);
  const candidates = ["pH", "alkalinityMgPerLCaCO3", "hardnessMgPerLCaCO3", "Ca", "Na"].filter(
    (reading) => !taken.includes(reading),
  );
  const least = Math.min(...candidates.map((reading) => leftBy(given, reading, waters)));
  for (const count of [40, 120]) {
    const named = asked(given, 90, count)[0]!.reading;
    expect(leftBy(given, named, waters), `${named} of ${count}`).toBeLessThan(1.15 * least);
  }
});
