import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { unitVerbs } from "./unit.ts";

// reference/small-ro-unit/SOURCE.md: flows, volumes, times 0.2 %, concentrations 0.5 %.
function rowsOf(file: string): Record<string, string>[] {
  const [head = "", ...lines] = readFileSync(`reference/small-ro-unit/${file}`, "utf8").trim().split(/\r?\n/);
  const names = head.split(",");
  return lines.map((line) => Object.fromEntries(line.split(",").map((value, i) => [names[i]!, value])));
}

describe.each([
  ["unit", "operating_points.csv"],
  ["unit fill", "fillings.csv"],
])("tapside %s", (verb, file) => {
  it.each(rowsOf(file))(`gives the columns of ${file}: $id`, (row) => {
    const { columns, row: compute } = unitVerbs[verb]!;
    const inputs = Object.fromEntries(Object.entries(row).filter(([name]) => !columns.includes(name)));
    const outcome = compute(inputs);
    if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
    for (const column of columns) {
      const tolerance = column.includes("mg_L") ? 0.005 : 0.002;
      expect(Math.abs(Number(outcome.value[column]) / Number(row[column]) - 1), column).toBeLessThan(
        tolerance,
      );
    }
  });
});

describe("tapside unit fit", () => {
  it.each(rowsOf("operating_points.csv"))("gives back A, B and restrictor of $id", (row) => {
    const outcome = unitVerbs["unit fit"]!.row(row);
    if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
    for (const column of ["A_L_m2_h_bar", "B_L_m2_h", "restrictor_L_h"])
      expect(Math.abs(Number(outcome.value[column]) / Number(row[column]) - 1), column).toBeLessThan(0.003);
  });
});

describe("rows that cannot be answered", () => {
  const row = rowsOf("operating_points.csv")[0]!;
  it("names a missing column", () => {
    const { temperature_C: _, ...rest } = row;
    expect(unitVerbs.unit!.row(rest)).toEqual({ kind: "missing", missing: ["temperature_C"] });
  });
  it("names a tank above the feed", () => {
    const outcome = unitVerbs.unit!.row({ ...row, tank_pressure_kPa_gauge: "500" });
    expect(outcome).toMatchObject({ kind: "refused", code: "tank-above-feed" });
  });
});
