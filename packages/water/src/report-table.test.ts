import { describe, expect, it } from "vitest";
import { plainLine, reportsOfTable } from "./report-table.ts";

/** A table by its cells; `~` parts them. Rows count from 2, as in a spreadsheet. */
function read(head: string, ...rows: readonly string[]) {
  const columns = head.split("~");
  return reportsOfTable({
    columns,
    rows: rows.map((row) => Object.fromEntries(row.split("~").map((cell, i) => [columns[i]!, cell]))),
    rowNumbers: rows.map((_, i) => i + 2),
  });
}

describe("a table of reports", () => {
  it("groups its lines by bottle and place and keeps both, with the day", () => {
    const reports = read(
      "sample~location~date~parameter~result~unit",
      "A1~Kitchen tap~2026-03-01~Calcium~61~mg/L",
      "A1~Kitchen tap~2026-03-01~pH~7,5~",
      "B2~Works~~Chloride~38~mg/L",
    );
    expect(
      reports.map(({ bottle, place, sampledOn, lines }) => [bottle, place, sampledOn, lines.length]),
    ).toEqual([
      ["A1", "Kitchen tap", "2026-03-01", 2],
      ["B2", "Works", undefined, 1],
    ]);
    expect(reports[0]?.lines[1]).toMatchObject({ name: "pH", mean: 7.5 });
  });
  it("names each row that cannot be taken and takes the others", () => {
    const [report] = read(
      "quantity~mean~low~high~unit",
      "Calcium~61~48~74~mg/L",
      "Calcium~60~~~mg/L",
      "Turbidity~0.3~~~NTU",
      "Sodium~much~~~mg/L",
      "Chloride~38~52~27~mg/L",
      "Sulfate~-4~~~mg/L",
      "Fluoride~~~~mg/L",
      "Nitrate~2.1~~~furlongs",
      "Silica~10~~~mg/L",
    );
    expect(report?.lines.map(({ name }) => name)).toEqual(["Calcium", "Silica"]);
    expect(report?.refused.map(({ row, code }) => [row, code])).toEqual([
      [3, "report-figure-twice"],
      [4, "report-quantity-unknown"],
      [5, "not-a-number"],
      [6, "report-range-reversed"],
      [7, "report-figure-below-zero"],
      [8, "report-figure-missing"],
      [9, "report-unit-unknown"],
    ]);
  });
  it("takes 'less than' as half of it (common practice, no source)", () => {
    expect(read("quantity~value~unit", "Fluoride~<0.2~mg/L")[0]?.lines[0]?.mean).toBe(0.1);
  });
  it("reads a column a figure, a report a line", () => {
    const reports = read("id~Ca_mg~Alk_CaCO3_mg~EC25_uScm", "w1~61~140~455", "w2~58~~");
    expect(reports.map(({ bottle, lines }) => [bottle, lines.length])).toEqual([
      ["w1", 3],
      ["w2", 1],
    ]);
    expect(reports[0]?.lines[1]).toMatchObject({ unit: "mg/L as CaCO3", mean: 140 });
  });
});

describe("a line by our own name", () => {
  it("keeps the printed unit where the name says no more than it", () => {
    expect(plainLine({ name: "Nitrate", unit: "mg/L as N", mean: 2.1 })).toMatchObject({
      value: { name: "NO3", unit: "mg/L as N", mean: 2.1 },
    });
  });
  it("bicarbonate of 163 mg/L is an alkalinity of 133.7 as CaCO3 (molar masses 61.017 and 50.05)", () => {
    expect(plainLine({ name: "Bicarbonate", unit: "mg/L", mean: 163 })).toMatchObject({
      value: { name: "Alk", unit: "mg/L as CaCO3", mean: 133.703 },
    });
  });
});
