import { quantile } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import { completeWater } from "./complete.ts";
import { seededUniform } from "./internal/seeded.ts";
import { reportedAmount, reportedId } from "./reported-amount.ts";
import { type ReportLine, readingsOfReport, readReport, reportQuality } from "./reported-water.ts";

/** Case O06 of `reference/water-cases/open.csv` (charge balance below 0.05 %), written as a laboratory prints it. */
const LINES: readonly ReportLine[] = [
  { name: "Calcium", unit: "mg/L", mean: 103.43 },
  { name: "Magnesium", unit: "mg/L", mean: 24.48 },
  { name: "Sodium", unit: "mg/L", mean: 41.95 },
  { name: "Potassium", unit: "µg/L", mean: 3870 },
  { name: "Chloride", unit: "mg/L", mean: 49.16 },
  { name: "Sulfate", unit: "mg/L", mean: 57.07 },
  { name: "Nitrate", unit: "mg/L as N", mean: 18.38 / 4.4268 },
  { name: "Alkalinity", unit: "mg/L as CaCO3", mean: 310.7 },
  { name: "pH", unit: "", mean: 7.26 },
  { name: "Temperature", unit: "°C", mean: 25 },
  { name: "Conductivity", unit: "µS/cm", mean: 838.2 },
  { name: "Total hardness", unit: "mg/L as CaCO3", mean: 359.1 },
];
const judge = (lines: readonly ReportLine[]) => {
  const report = readReport(lines);
  if (report.kind !== "known") throw new Error(JSON.stringify(report));
  const quality = reportQuality(report.value);
  if (quality.kind !== "known") throw new Error(JSON.stringify(quality));
  return quality.value;
};
const changed = (name: string, change: Partial<ReportLine>) =>
  LINES.map((line) => (line.name === name ? { ...line, ...change } : line));

describe("units of a report (definitions)", () => {
  it.each([
    ["Ca", 250, "mg/L as CaCO3", 100.1],
    ["Alk", 61.017, "mg/L as HCO3", 50.05],
    ["NO3", 10, "mg/L as N", 44.268],
    ["SiO2", 1, "mg/L as Si", 2.1393],
    ["hardness", 1, "gpg", 17.118],
    ["hardness", 10, "dH", 178.48],
    ["hardness", 1, "mmol/L", 100.09],
    ["Cl", 1, "meq/L", 35.453],
    ["F", 700, "ppb", 0.7],
    ["ec25", 0.5, "mS/cm", 500],
    ["ec25", 50, "mS/m", 500],
    ["temperatureC", 50, "°F", 10],
  ] as const)("%s: %d %s", (id, value, unit, expected) => {
    const amount = reportedAmount(id, value, unit);
    expect(amount.kind === "known" && Math.abs(amount.value / expected - 1)).toBeLessThan(1e-3);
  });
  it("a unit that does not belong is refused by name", () => {
    expect(reportedAmount("Ca", 5, "NTU", "Calcium")).toMatchObject({ code: "report-unit-unknown" });
  });
  it("chlorine is not chloride", () => {
    expect([reportedId("Total chlorine"), reportedId("Chloride"), reportedId("Turbidity")]).toEqual([
      "totalChlorine",
      "Cl",
      undefined,
    ]);
  });
});

describe("a report judged", () => {
  it("a sound one agrees with itself and with its conductivity", () => {
    expect(judge(LINES)).toMatchObject({
      chargeVerdict: "agrees",
      conductivityVerdict: "agrees",
      suspicions: [],
    });
  });
  /** Common salt, no source but its formula: 22.99 of sodium for 35.45 of chloride, no alkalinity, so no carbonate holds its pH up. */
  it("one without alkalinity and pH is judged at pH 5.6, one with alkalinity at 7.5", () => {
    const salt: readonly ReportLine[] = [
      ...["Calcium", "Magnesium", "Sulfate", "Alkalinity"].map((name) => ({ name, unit: "mg/L", mean: 0 })),
      { name: "Sodium", unit: "mg/L", mean: 22.99 },
      { name: "Chloride", unit: "mg/L", mean: 35.45 },
    ];
    const at = (pH: number) => [...salt, { name: "pH", unit: "", mean: pH }];
    expect(judge(salt)).toMatchObject({ chargeVerdict: "agrees" });
    expect(judge(salt)).toEqual(judge(at(5.6)));
    const basic = readReport(at(9.5));
    expect(basic.kind === "known" && reportQuality(basic.value)).toMatchObject({
      kind: "refused",
      code: "hydroxide-exceeds-alkalinity",
    });
    const without = (name: string) => LINES.filter((line) => line.name !== name);
    expect(judge(without("pH"))).toEqual(judge(changed("pH", { mean: 7.5 })));
  });
  it.each([
    ["Calcium", { mean: 258.3 }, "calcium-given-as-CaCO3"],
    ["Alkalinity", { mean: 378.8 }, "alkalinity-given-as-bicarbonate"],
    ["Alkalinity", { mean: 18.15 }, "alkalinity-in-grains-per-gallon"],
    ["Total hardness", { mean: 20.98 }, "hardness-in-grains-per-gallon"],
    ["Conductivity", { mean: 0.8382 }, "conductivity-in-another-unit"],
  ] as const)("%s slipped: suspected", (name, change, suspicion) => {
    const solids = { name: "TDS", unit: "mg/L", mean: 500 };
    expect(judge([...changed(name, change), solids]).suspicions).toContain(suspicion);
  });
  it("without sodium the balance cannot be told, and says so", () => {
    expect(judge(LINES.filter(({ name }) => name !== "Sodium"))).toMatchObject({
      chargeVerdict: "cannot-tell",
      missing: ["Na"],
    });
  });
  it("refuses what no report can mean", () => {
    expect(readReport([{ name: "Calcium", unit: "mg/L", mean: -3 }])).toMatchObject({
      code: "report-figure-below-zero",
    });
    expect(readReport([{ name: "Calcium", unit: "mg/L", low: 9, high: 3 }])).toMatchObject({
      code: "report-range-reversed",
    });
  });
});

it("a yearly range leaves a wider water than one value", () => {
  const width = (line: ReportLine) => {
    const report = readReport([line, { name: "pH", unit: "", mean: 7.5 }]);
    if (report.kind !== "known") throw new Error(report.kind);
    const outcome = completeWater(readingsOfReport(report.value), { random: seededUniform(4), samples: 200 });
    if (outcome.kind !== "known") throw new Error(outcome.kind);
    const sulfate = outcome.value.map((water) => water.ions.SO4!);
    return quantile(sulfate, 0.95) / quantile(sulfate, 0.05);
  };
  const one = width({ name: "Sulfate", unit: "mg/L", mean: 50 });
  expect(width({ name: "Sulfate", unit: "mg/L", mean: 50, low: 20, high: 80 })).toBeGreaterThan(1.5 * one);
});
