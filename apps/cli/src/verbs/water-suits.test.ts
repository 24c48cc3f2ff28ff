import { describe, expect, it } from "vitest";
import { waterSuitsVerb } from "./water-suits.ts";

/** Chloride of a blend is 5 + 100 f (mass balance); no source but arithmetic. */
const ROW = {
  appliance: "oven",
  use: "steam",
  hottest_C: "100",
  steel: "316",
  copper: "no",
  limit_Cl_mg: "25.1",
  T_C: "15",
  feed_pH: "7.5",
  feed_Alk_CaCO3_mg: "140",
  feed_Ca_mg: "15",
  feed_Cl_mg: "105",
  feed_SiO2_mg: "20",
  perm_pH: "6",
  perm_Alk_CaCO3_mg: "8",
  perm_Ca_mg: "2",
  perm_Cl_mg: "5",
  perm_SiO2_mg: "1",
};
const answer = (change: Readonly<Record<string, string>> = {}) => waterSuitsVerb.row({ ...ROW, ...change });

describe("water suits", () => {
  it("answers a whole row", () => {
    expect(answer()).toMatchObject({
      value: { permeate_not_within: "", blend_low: 0, blend_high: 0.2, why_none: "" },
    });
  });
  it.each([
    ["a limit below zero", { limit_Cl_mg: "-5" }, "below-zero"],
    ["chlorine below zero", { feed_chlorine_mg: "-1" }, "below-zero"],
    ["ice for the hottest water", { hottest_C: "-5" }, "temperature-out-of-range"],
    ["°F for the hottest water", { hottest_C: "212" }, "temperature-out-of-range"],
    ["steel hotter than its table", { hottest_C: "135" }, "beyond-steel-grade"],
    ["a use it does not know", { use: "tea" }, "word-unknown"],
    ["another steel", { steel: "430" }, "word-unknown"],
    ["perhaps copper", { copper: "maybe" }, "word-unknown"],
    ["a remineraliser beyond saturation", { remineraliser_approach: "2" }, "approach-out-of-range"],
    ["words for a limit", { limit_SiO2_mg: "abc" }, "not-a-number"],
    ["a pH that is none", { perm_pH: "17" }, "ph-out-of-range"],
    ["a negative ion", { feed_Ca_mg: "-1" }, "negative-concentration"],
    ["hydroxide above the alkalinity", { perm_pH: "12" }, "hydroxide-exceeds-alkalinity"],
  ])("refuses %s by name", (_, change, code) => {
    expect(answer(change as Record<string, string>)).toMatchObject({ kind: "refused", code });
  });
  it.each(["use", "T_C", "feed_pH", "perm_Alk_CaCO3_mg"])("names %s where it is missing", (column) => {
    expect(answer({ [column]: "" })).toMatchObject({ kind: "missing", missing: [column] });
  });
  it("takes no limit as kept by an ion nobody read, in neither water nor blend", () => {
    const blank = answer({ feed_Cl_mg: "", feed_SiO2_mg: "" });
    if (blank.kind !== "known") throw new Error(JSON.stringify(blank));
    expect(blank.value.feed_not_within).toContain("cannot-tell: chloride ..25.1 mg/L");
    expect(blank.value.feed_not_within).toContain("cannot-tell: silica ..150 mg/L");
    expect(blank.value.permeate_not_within).toBe("");
    expect(answer({ feed_Cl_mg: "0" })).toMatchObject({ value: { feed_not_within: "" } });
  });
  /** A tenth of a feed with 0.5 mg/L brings 0.05 of chlorine, above the 0.02 of the coffee standard. */
  it("keeps no blend whose feed alone brings too much chlorine", () => {
    const coffee = { use: "coffee", limit_Cl_mg: "", feed_chlorine_mg: "0.5", feed_Ca_mg: "60" };
    expect(answer(coffee)).toMatchObject({ value: { blend_low: "" } });
    expect(answer({ ...coffee, feed_chlorine_mg: "0" })).toMatchObject({
      value: { blend_low: expect.any(Number) },
    });
  });
});
