import { expect, it } from "vitest";
import { completeWater } from "./complete.ts";
import { seededUniform } from "./internal/seeded.ts";
import { mostTellingReadings } from "./most-telling.ts";

/** SI moves by one for each unit of pH (definition of the index), so an unread pH tells most beside hardness and alkalinity. */
it("asks for pH when hardness and alkalinity are read and pH is not", () => {
  const given = { temperatureC: 15, hardnessMgPerLCaCO3: 200, alkalinityMgPerLCaCO3: 150, ec25UsPerCm: 450 };
  const samples = completeWater(given, { random: seededUniform(4), samples: 100 });
  if (samples.kind !== "known") throw new Error(samples.kind);
  const asked = mostTellingReadings(samples.value, given);
  expect(asked.kind === "known" && asked.value[0]!.reading).toBe("pH");
});
