import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { reportFile } from "./report-file.ts";

const taken = (text: string) => {
  const file = reportFile(text);
  if (file.kind !== "known") throw new Error(JSON.stringify(file));
  return file.value;
};

describe("a report's file", () => {
  it("keeps bottle and place; ranges make a utility's year (the district's example)", () => {
    const { reports, refused } = taken(readFileSync("examples/larkmoor-water-report.csv", "utf8"));
    expect(refused).toEqual([]);
    expect(reports.map(({ entry }) => [entry.origin, entry.bottleCode, entry.samplingPlace])).toEqual([
      ["utility", "yearly report", "Larkmoor Moor Works"],
      ["laboratory", "LM-0412", "Larkmoor Primary kitchen tap"],
    ]);
    expect(reports[0]?.entry.lines).toContainEqual({
      name: "NO3",
      unit: "mg/L as N",
      mean: 2.1,
      low: 0.8,
      high: 3.6,
    });
  });
  it("takes semicolons with comma decimals, as spreadsheets elsewhere write them", () => {
    const { reports } = taken(
      "parameter;value;unit\r\nCalcium;61,5;mg/L\r\nWater temperature;12;°C\r\nTemp;12,5;°C",
    );
    expect(reports[0]?.entry.lines).toEqual([
      { name: "Ca", unit: "mg/L", mean: 61.5 },
      { name: "temperature", unit: "°C", mean: 12.5 },
    ]);
  });
  it("refuses rows by their number and keeps the rest", () => {
    const { reports, refused } = taken(
      "quantity,value,unit\nCalcium,61,mg/L\n\nCalcium,62,mg/L\nSodium,x,mg/L",
    );
    expect(reports[0]?.entry.lines).toHaveLength(1);
    expect(refused.map(({ row, code }) => [row, code])).toEqual([
      [4, "report-figure-twice"],
      [5, "not-a-number"],
    ]);
  });
  it.each([
    ["", "list-empty"],
    ["a,a\n1,2", "list-column-twice"],
    ["shoe,size\nleft,43", "report-nothing-known"],
  ])("refuses %j as a whole", (text, code) => {
    expect(reportFile(text)).toMatchObject({ kind: "refused", code });
  });
});
