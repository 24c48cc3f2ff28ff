import { describe, expect, it } from "vitest";
import { atMostByConductivity } from "./at-most-by-conductivity.ts";

/** Equivalent conductivities at 25 °C, S·cm²/mol: Robinson & Stokes, Electrolyte Solutions, appendix 6.3 (from memory, unverified). */
const SODIUM_CHLORIDE = [
  { molPerL: 0.001, lambda: 123.74 },
  { molPerL: 0.005, lambda: 120.64 },
  { molPerL: 0.01, lambda: 118.53 },
];

describe("the most a conductivity can hold", () => {
  it.each(SODIUM_CHLORIDE)(
    "is above the chloride of a sodium chloride solution, $molPerL mol/L",
    ({ molPerL, lambda }) => {
      const ec = molPerL * lambda * 1000;
      const chloride = molPerL * 35_450;
      const bound = atMostByConductivity("chloride", ec)!;
      expect(bound).toBeGreaterThan(chloride);
      expect(bound).toBeLessThan(1.12 * chloride);
    },
  );

  it("says nothing of silica and pH, which do not conduct", () => {
    expect(atMostByConductivity("silica", 100)).toBeUndefined();
    expect(atMostByConductivity("pH", 100)).toBeUndefined();
  });
});
