import { known, type Outcome } from "@tapside/quantities";
import type { ConservedWater, WaterAnalysis } from "./analysis.ts";
import { loadAnalysis, loadConserved, solveRefusal } from "./internal/load.ts";
import { SOLVED, solveAtPh, solveClosed, startFresh } from "./internal/solve.ts";
import { createWorkspace } from "./internal/workspace.ts";
import { type Water, waterOf } from "./water.ts";

const workspace = createWorkspace();

/**
 * Speciation of a water from its analysis: free ions, ion pairs, dissolved CO2 and saturation indices.
 * Mass balances of Ca, Mg, Na, K, Cl, SO4, NO3, F, SiO2 and alkalinity; P82 constants; extended Debye–Hückel.
 *
 * Source: Plummer & Busenberg 1982 and `reference/p82`; molar masses and conventions of `reference/water-cases`.
 * Range: 0–100 °C (to 160 °C extrapolated), 1–5000 mg/L.
 * Error: about 0.1 in SI between databases at 5 and 90 °C, 0.2 above 100 °C; more from the readings themselves.
 *
 * @example
 * ```ts
 * import { speciate } from "@tapside/water";
 * const ions = { Ca: 103.43, Mg: 24.48, Na: 41.95, K: 3.87, Cl: 49.16, SO4: 57.07, NO3: 18.38, F: 0.376, SiO2: 12.34 };
 * const water = speciate({ temperatureC: 25, pH: 7.26, alkalinityMgPerLCaCO3: 310.7, ions });
 * water.kind; // => "known"
 * speciate({ temperatureC: 25, pH: 12, alkalinityMgPerLCaCO3: 50, ions: {} }).code; // => "hydroxide-exceeds-alkalinity"
 * ```
 */
export function speciate(analysis: WaterAnalysis): Outcome<Water> {
  const refusal = loadAnalysis(workspace, analysis);
  if (refusal) return refusal;
  const status = solveAtPh(workspace);
  return status === SOLVED ? known(waterOf(workspace)) : solveRefusal(status, workspace);
}

/** Speciation from what a water keeps (alkalinity and total inorganic carbon); its pH is solved. */
export function speciateConserved(water: ConservedWater): Outcome<Water> {
  const refusal = loadConserved(workspace, water);
  if (refusal) return refusal;
  startFresh(workspace);
  const status = solveClosed(workspace);
  return status === SOLVED
    ? known({ ...waterOf(workspace), totals: water.totals })
    : solveRefusal(status, workspace);
}
