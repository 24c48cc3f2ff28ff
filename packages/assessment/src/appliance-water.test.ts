import { speciate } from "@tapside/water";
import { describe, expect, it } from "vitest";
import { answerLeftOpen, possibleMakes, waterLimitsOf } from "./appliance-water.ts";
import { productWater } from "./product-water.ts";

describe("what an appliance's record leaves open", () => {
  const blank = (more: object) => possibleMakes({ id: "a", name: "A", limits: [], ...more }).blank;
  it("the hottest water counts only where a steel's chloride steps lie in its span: 60, 80 and 120 °C (maker's table)", () => {
    expect(blank({ type: "dishwasher", steelGrade: "304", copperOrBrass: false })).toEqual([
      "appliance.hottestC",
    ]);
    expect(blank({ type: "steamer", steelGrade: "304", copperOrBrass: false })).toEqual([]);
    expect(blank({ type: "ice", hottestC: 15 })).toEqual(["appliance.steelGrade", "appliance.copperOrBrass"]);
  });
});

describe("limits of an appliance", () => {
  it("a label in NaCl ppm is asked on the 442 scale: 702 is 1000 (TDS tables of two meter manuals)", () => {
    const limits = waterLimitsOf({
      id: "a",
      name: "Brewer",
      type: "ice",
      limits: [{ id: "l", quantity: "tds", high: 702.1, scale: "NaCl", source: "label" }],
    });
    expect(limits[0]).toMatchObject({
      strictest: { property: "tds442", high: 1000, appliance: "Brewer" },
      loosest: { high: 1000 },
    });
  });
  it("a coffee machine is asked the coffee standard beside its label", () => {
    const plain = { steelGrade: "304", hottestC: 130, copperOrBrass: false } as const;
    const properties = waterLimitsOf({ id: "a", name: "Brewer", type: "coffee", limits: [], ...plain }).map(
      ({ strictest }) => strictest.property,
    );
    expect(properties).toEqual(["tds442", "calciumHardness", "pH", "totalChlorine"]);
  });
});

describe("a limit the record leaves open", () => {
  const washer = { id: "a", name: "Washer", type: "dishwasher", limits: [], copperOrBrass: false } as const;
  const chloride = (more: object) =>
    waterLimitsOf({ ...washer, ...more }).find(({ strictest }) => strictest.property === "chloride")!;
  const at = (mgPerL: number, more: object) =>
    answerLeftOpen(chloride(more), (limit) => ({
      limit,
      values: [mgPerL],
      shareWithin: 0,
      answer: mgPerL <= limit.high! ? "within" : "outside",
    })).answer;
  it("steel 304 between 55 and 90 °C: 10 mg/L is kept, 60 is not, 30 cannot be told (maker's table: 50, 25, 10)", () => {
    const steel = { steelGrade: "304" };
    expect([10, 30, 60].map((mgPerL) => at(mgPerL, steel))).toEqual(["within", "cannot-tell", "outside"]);
    expect(at(30, { ...steel, hottestC: 60 })).toBe("within");
  });
  it("copper that may or may not be there is no reason to say outside", () => {
    const { copperOrBrass: _, ...unknown } = washer;
    const ph = waterLimitsOf(unknown).find(({ strictest }) => strictest.property === "pH")!;
    expect(
      answerLeftOpen(ph, (limit) => ({ limit, values: [6], shareWithin: 0, answer: "outside" })).answer,
    ).toBe("cannot-tell");
  });
});

it("product keeps the CO2 of its feed and loses its pH (CO2 is not rejected; membrane trade fact)", () => {
  const feed = speciate({
    temperatureC: 15,
    pH: 7.5,
    alkalinityMgPerLCaCO3: 140,
    ions: { Ca: 61, Mg: 8, Na: 24, Cl: 38, SO4: 46 },
  });
  if (feed.kind !== "known") throw new Error(feed.kind);
  const product = productWater(feed.value, 0.05);
  if (product.kind !== "known") throw new Error(product.kind);
  expect(product.value.totals.Cl / feed.value.totals.Cl).toBeCloseTo(0.05, 6);
  expect(product.value.totals.Ca / feed.value.totals.Ca).toBeCloseTo(0.02, 6);
  expect(product.value.carbonMolPerKg).toBeGreaterThan(feed.value.molality.CO2);
});
