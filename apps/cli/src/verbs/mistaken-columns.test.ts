import { describe, expect, it } from "vitest";
import { mistakenColumns } from "./mistaken-columns.ts";

describe("columns that were meant otherwise", () => {
  const asked = ["T_C", "pH", "Cl_mg", "Ca_mg", "Alk_CaCO3_mg", "feed_pressure_psi"];

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
});
