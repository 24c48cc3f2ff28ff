import {
  ANHYDRITE,
  CALCITE,
  equilibrate,
  type Precipitate,
  type Solid,
  solveMode,
  take,
} from "./precipitate.ts";
import { SOLVED } from "./solve.ts";
import type { CarbonateMode } from "./sweep.ts";
import type { Workspace } from "./workspace.ts";

export interface BothSolids {
  status: number;
  calciteMolPerKg: number;
  anhydriteMolPerKg: number;
}

/** Calcite and anhydrite in turn until neither moves; what has precipitated may dissolve again, but no more than that. */
export function equilibrateBoth(ws: Workspace, mode: CarbonateMode, out: BothSolids): void {
  const step: Precipitate = { status: SOLVED, molPerKg: 0 };
  const held = [0, 0];
  for (let i = 0; i < 200; i++) {
    const first = move(ws, CALCITE, mode, held, step);
    const status = step.status;
    const second = status === SOLVED ? move(ws, ANHYDRITE, mode, held, step) : 0;
    out.status = step.status;
    if (step.status !== SOLVED || (first < 1e-11 && second < 1e-11)) break;
  }
  out.calciteMolPerKg = held[CALCITE]!;
  out.anhydriteMolPerKg = held[ANHYDRITE]!;
}

function move(ws: Workspace, solid: Solid, mode: CarbonateMode, held: number[], step: Precipitate): number {
  equilibrate(ws, solid, mode, held[solid]! > 0, step);
  if (step.status !== SOLVED) return 0;
  const lacking = held[solid]! + step.molPerKg;
  if (lacking < 0) {
    take(ws, solid, -lacking);
    step.status = solveMode(ws, mode);
    step.molPerKg -= lacking;
  }
  held[solid]! += step.molPerKg;
  return Math.abs(step.molPerKg);
}
