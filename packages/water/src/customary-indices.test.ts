import type { Outcome } from "@tapside/quantities";
import { expect, it } from "vitest";
import { CUSTOMARY_INDICES, customaryIndices } from "./customary-indices.ts";

const value = (outcome: Outcome<number>) => (outcome.kind === "known" ? outcome.value : Number.NaN);

/** UFC 3-240-13FN (2005), App. B: 120 °F, pH 8.2, solids 1000, calcium 500, alkalinity 100 mg/L as CaCO3. */
it("is the worked example of UFC 3-240-13FN but for the temperature term (0.08 between formula and table)", () => {
  const solids = 1000 - 200.2 - 100 * 1.2193 * 0.4917;
  const indices = customaryIndices({
    temperatureC: 48.89,
    pH: 8.2,
    alkalinityMgPerLCaCO3: 100,
    ions: { Ca: 200.2, Cl: solids / 2, Na: solids / 2 },
  });
  const term = 6.85 - 6.77;
  expect(Math.abs(value(indices.langelierSimplified) - (1.43 - term))).toBeLessThan(0.01);
  expect(Math.abs(value(indices.ryznar) - (5.34 + 2 * term))).toBeLessThan(0.02);
  expect(Math.abs(value(indices.puckorius) - (6.07 + 2 * term))).toBeLessThan(0.02);
});

/** corrosion-doctors.org, Index-Larson-Skold: chloride 40, sulfate 62, alkalinity 245 mg/L: 0.494. */
it("is the published example of Larson and Skold", () => {
  const water = { temperatureC: 20, pH: 7.8, alkalinityMgPerLCaCO3: 245, ions: { Ca: 80, Cl: 40, SO4: 62 } };
  expect(Math.abs(value(customaryIndices(water).larsonSkold) - 0.494)).toBeLessThan(0.002);
});

it("has no number, and says so, for a water without calcium or alkalinity", () => {
  const indices = customaryIndices({ temperatureC: 20, pH: 6, alkalinityMgPerLCaCO3: 0, ions: {} });
  for (const id of CUSTOMARY_INDICES.slice(1)) expect(indices[id].kind, id).toBe("refused");
});
