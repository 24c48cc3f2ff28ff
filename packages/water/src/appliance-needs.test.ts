import { describe, expect, it } from "vitest";
import { publishedNeeds } from "./appliance-needs.ts";
import { speciate } from "./speciate.ts";
import { suits } from "./suits.ts";

const answers = (make: Parameters<typeof publishedNeeds>[0], ions: object, pH: number, alk: number) => {
  const water = speciate({ temperatureC: 20, pH, alkalinityMgPerLCaCO3: alk, ions });
  if (water.kind !== "known") throw new Error(water.kind);
  const outcome = suits([water.value], publishedNeeds(make), { totalChlorineMgPerL: 0 });
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  return Object.fromEntries(outcome.value.map(({ limit, answer }) => [limit.property, answer]));
};

describe("published needs", () => {
  it("the coffee standard: 68 mg/L calcium hardness, pH 7 and 40 mg/L alkalinity suit (SCAA targets)", () => {
    const target = { Ca: 27.2, Mg: 6, Na: 10, Cl: 40, SO4: 25 };
    const said = answers({ name: "brewer", use: "coffee", hottestC: 95 }, target, 7, 40);
    expect(said).toEqual({
      tds442: "within",
      calciumHardness: "within",
      pH: "within",
      totalChlorine: "within",
    });
  });
  it("permeate stands outside on copper: few minerals, low pH (ASPE Pipeline expert answer)", () => {
    const said = answers(
      { name: "boiler", use: "cold", hottestC: 20, copperOrBrass: true },
      { Ca: 1, Na: 5, Cl: 5 },
      5.8,
      6,
    );
    expect(said).toMatchObject({ conductivity25: "outside", pH: "outside" });
  });
  it("30 mg/L chloride at 100 °C is beyond 304 and within 316 (plate table, common practice)", () => {
    const of = (steel: "304" | "316") =>
      answers({ name: "oven", use: "steam", hottestC: 100, steel }, { Ca: 20, Cl: 30, Na: 10 }, 7, 30)
        .chloride;
    expect([of("304"), of("316")]).toEqual(["outside", "within"]);
  });
  it("steel hotter than its table has no limit rather than a wrong one", () => {
    const needs = publishedNeeds({ name: "x", use: "hot", hottestC: 150, steel: "316" });
    expect(needs.some((limit) => limit.property === "chloride")).toBe(false);
  });
});
