import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { precipitationPotential } from "./precipitation.ts";
import { remineralise } from "./remineralise.ts";
import { speciate, speciateConserved } from "./speciate.ts";

const permeate = (pH: number, alkalinityMgPerLCaCO3: number) => {
  const outcome = speciate({ temperatureC: 20, pH, alkalinityMgPerLCaCO3, ions: { Ca: 2, Na: 5, Cl: 4 } });
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  return outcome.value;
};
const after = (approach: number) => {
  const outcome = remineralise(permeate(5.9, 8), approach);
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  return outcome.value;
};

describe("a bed of calcite (laws of its stoichiometry; no source but chemistry)", () => {
  it("brings the calcite index to 0 when the water has time enough", () => {
    const potential = precipitationPotential(after(1).water);
    expect(potential.kind === "known" && Math.abs(potential.value.mgPerLCaCO3)).toBeLessThan(1e-3);
  });
  it("adds calcium, twice as much alkalinity and carbon in step, and no charge", () => {
    const before = permeate(5.9, 8);
    const { water, dissolvedMgPerLCaCO3 } = after(0.7);
    const mol = dissolvedMgPerLCaCO3 / 100091.1;
    expect(water.totals.Ca - before.totals.Ca).toBeCloseTo(mol, 12);
    expect(water.alkalinityEqPerKg - before.alkalinityEqPerKg).toBeCloseTo(2 * mol, 12);
    expect(water.carbonMolPerKg - before.carbonMolPerKg).toBeCloseTo(mol, 12);
  });
  it("raises the pH the more, the longer the contact", () => {
    const pH = [0, 0.3, 0.6, 0.9].map((approach) => {
      const solved = speciateConserved(after(approach).water);
      return solved.kind === "known" ? solved.value.pH : Number.NaN;
    });
    expect(pH).toEqual([...pH].sort((a, b) => a - b));
    expect(pH[3]! - pH[0]!).toBeGreaterThan(0.5);
  });
  it("takes nothing up from a water that would scale, and never precipitates", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 9, noNaN: true }),
        fc.integer({ min: 10, max: 400 }),
        (pH, alk) => {
          const feed = speciate({
            temperatureC: 20,
            pH,
            alkalinityMgPerLCaCO3: alk,
            ions: { Ca: alk * 0.4, Na: 10 },
          });
          if (feed.kind !== "known") return;
          const outcome = remineralise(feed.value, 1);
          if (outcome.kind !== "known") throw new Error(outcome.kind);
          const { dissolvedMgPerLCaCO3 } = outcome.value;
          expect(dissolvedMgPerLCaCO3 > 1e-6).toBe(feed.value.saturation.calcite < -1e-7);
        },
      ),
      { numRuns: 100, seed: 8 },
    );
  });
  it("refuses an approach that is none", () => {
    expect(remineralise(permeate(6, 8), 1.2)).toMatchObject({ code: "approach-out-of-range" });
  });
});
