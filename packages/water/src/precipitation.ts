import { known, type Outcome } from "@tapside/quantities";
import { CACO3_G_PER_MOL, type ConservedWater } from "./analysis.ts";
import { loadConserved, solveRefusal } from "./internal/load.ts";
import { CALCITE, equilibrate, type Precipitate } from "./internal/precipitate.ts";
import { SOLVED, solveClosed, startFresh } from "./internal/solve.ts";
import { BY_CARBON } from "./internal/sweep.ts";
import { createWorkspace } from "./internal/workspace.ts";
import { type Water, waterOf } from "./water.ts";

const workspace = createWorkspace();
const removed: Precipitate = { status: SOLVED, molPerKg: 0 };

/** Calcium carbonate that would leave the water (negative: that the water would dissolve), and the water afterwards. */
export interface PrecipitationPotential {
  readonly mgPerLCaCO3: number;
  readonly after: Water;
}

/**
 * Calcium carbonate precipitation potential (CCPP): the CaCO3 that brings SI calcite to 0 at the water's own
 * temperature, closed to gas. Precipitating x mol/kg removes x calcium, 2x alkalinity and x carbon.
 *
 * Source: definition of Standard Methods 2330 (from memory); reference values in `reference/water-cases`.
 * Range: as `speciate`.
 * Error: 1–2 mg/L between databases for hard water.
 */
export function precipitationPotential(water: ConservedWater): Outcome<PrecipitationPotential> {
  const refusal = loadConserved(workspace, water);
  if (refusal) return refusal;
  startFresh(workspace);
  const status = solveClosed(workspace);
  if (status !== SOLVED) return solveRefusal(status, workspace);
  equilibrate(workspace, CALCITE, BY_CARBON, true, removed);
  if (removed.status !== SOLVED) return solveRefusal(removed.status, workspace);
  return known({ mgPerLCaCO3: removed.molPerKg * CACO3_G_PER_MOL * 1000, after: waterOf(workspace) });
}
