import { describe, expect, it } from "vitest";
import { mistakenColumns, watchedRow } from "./columns-read.ts";

describe("columns that were meant otherwise", () => {
  const asked = new Set(["T_C", "pH", "Cl_mg", "Ca_mg", "Alk_CaCO3_mg", "feed_pressure_psi"]);

  it.each([
    ["temp_C", "T_C"],
    ["PH", "pH"],
    ["Cl_mgL", "Cl_mg"],
    ["alkalinity_CaCO3_mg", "Alk_CaCO3_mg"],
    ["Feed pressure psi", "feed_pressure_psi"],
  ])("%s was meant for %s", (written, meant) => {
    expect(mistakenColumns([written, "id"], asked)).toEqual([[written, meant]]);
  });

  it("columns that are read, and strangers, are left alone", () => {
    expect(mistakenColumns(["T_C", "pH", "Cl_mg", "site", "note", "Cu_mg", "taken_on"], asked)).toEqual([]);
  });

  it("a row remembers what it was asked for", () => {
    const seen = new Set<string>();
    const row: Readonly<Record<string, string>> = watchedRow({ pH: "7" }, seen);
    expect([row.pH, row.T_C]).toEqual(["7", undefined]);
    expect([...seen]).toEqual(["pH", "T_C"]);
  });
});
