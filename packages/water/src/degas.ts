import { known, type Outcome } from "@tapside/quantities";
import { CACO3_G_PER_MOL, CO2_G_PER_MOL, type ConservedWater } from "./analysis.ts";
import { loadConserved, solveRefusal } from "./internal/load.ts";
import { openTo } from "./internal/open-to.ts";
import { CALCITE, equilibrate, type Precipitate } from "./internal/precipitate.ts";
import { SOLVED, solveOpen, startFresh } from "./internal/solve.ts";
import { BY_GAS } from "./internal/sweep.ts";
import { createWorkspace } from "./internal/workspace.ts";
import { type Water, waterOf } from "./water.ts";

const workspace = createWorkspace();
const removed: Precipitate = { status: SOLVED, molPerKg: 0 };

/** A water that has come to rest with the CO2 of the air above it. */
export interface Degassed {
  readonly water: Water;
  /** CO2 that left (negative: taken up), mg per litre. */
  readonly co2RemovedMgPerL: number;
  /** The same with calcite also allowed to precipitate. */
  readonly withCalcite: { readonly water: Water; readonly precipitatedMgPerLCaCO3: number };
}

/** CO2 of outdoor air as the reference cases take it, 10^-3.4 atm. */
export const AIR_CO2_ATM = 10 ** -3.4;

/**
 * Opening to air: alkalinity is kept, a(CO2) = KH pCO2.
 *
 * Source: Plummer & Busenberg 1982 (KH); reference values in `reference/water-cases/degassing_open.csv`.
 * Range: 0–100 °C.
 * Error: as `speciate`; says where the water ends, not how fast.
 */
export function degas(water: ConservedWater, co2Atm: number = AIR_CO2_ATM): Outcome<Degassed> {
  const refusal = loadConserved(workspace, water) ?? openTo(workspace, co2Atm);
  if (refusal) return refusal;
  startFresh(workspace);
  const status = solveOpen(workspace);
  if (status !== SOLVED) return solveRefusal(status, workspace);
  const open = waterOf(workspace);
  equilibrate(workspace, CALCITE, BY_GAS, false, removed);
  if (removed.status !== SOLVED) return solveRefusal(removed.status, workspace);
  return known({
    water: open,
    co2RemovedMgPerL: (water.carbonMolPerKg - open.carbonMolPerKg) * CO2_G_PER_MOL * 1000,
    withCalcite: {
      water: waterOf(workspace),
      precipitatedMgPerLCaCO3: removed.molPerKg * CACO3_G_PER_MOL * 1000,
    },
  });
}
