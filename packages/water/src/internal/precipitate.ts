import { PLACES } from "./layout.ts";
import { NEGATIVE_CARBON, SOLVED, solveClosed, solveOpen } from "./solve.ts";
import { BY_GAS, type CarbonateMode } from "./sweep.ts";
import type { Workspace } from "./workspace.ts";

const at = PLACES;

export const CALCITE = 0;
export const ANHYDRITE = 1;
export type Solid = typeof CALCITE | typeof ANHYDRITE;

/** Amount of solid that left the water (negative: dissolved), mol/kg, and how the solve ended. */
export interface Precipitate {
  status: number;
  molPerKg: number;
}

const TOLERANCE = 2e-9;
const EVALUATIONS = 80;

/** Ion activity product over solubility product. */
export function saturationRatio(ws: Workspace, solid: Solid): number {
  const { molality: m, gamma: g, k } = ws;
  const calcium = m[at.CA]! * g[at.CA]!;
  return solid === CALCITE
    ? (calcium * m[at.CO3]! * g[at.CO3]!) / k[at.K_CALCITE]!
    : (calcium * m[at.SO4]! * g[at.SO4]!) / k[at.K_ANHYDRITE]!;
}

/** Takes `step` mol/kg of a solid out of the totals. */
export function take(ws: Workspace, solid: Solid, step: number): void {
  ws.totals[at.CA]! -= step;
  if (solid === ANHYDRITE) ws.totals[at.SO4]! -= step;
  else {
    ws.alkalinity -= 2 * step;
    ws.carbon -= step;
  }
}

export const solveMode = (ws: Workspace, mode: CarbonateMode): number =>
  mode === BY_GAS ? solveOpen(ws) : solveClosed(ws);

const largestLoss = (ws: Workspace, solid: Solid, mode: CarbonateMode): number => {
  const calcium = ws.totals[at.CA]!;
  if (solid === ANHYDRITE) return Math.min(calcium, ws.totals[at.SO4]!);
  return mode === BY_GAS ? calcium : Math.min(calcium, ws.carbon);
};

/**
 * Brings a solved water to saturation with one solid: precipitates, or dissolves when `mayDissolve`.
 * Bracketed: at x = 0 the ratio is known, at x = all calcium (or carbon, or sulfate) it is zero.
 */
export function equilibrate(
  ws: Workspace,
  solid: Solid,
  mode: CarbonateMode,
  mayDissolve: boolean,
  out: Precipitate,
): void {
  out.status = SOLVED;
  out.molPerKg = 0;
  const excess = Math.sqrt(saturationRatio(ws, solid)) - 1;
  if (Math.abs(excess) < TOLERANCE || (excess < 0 && !mayDissolve)) return;
  if (excess < 0) dissolve(ws, solid, mode, excess, out);
  else search(ws, solid, mode, 0, excess, largestLoss(ws, solid, mode), -1, 0, out);
}

function dissolve(ws: Workspace, solid: Solid, mode: CarbonateMode, excess: number, out: Precipitate): void {
  let right = 0;
  let rightExcess = excess;
  let size = 1e-4;
  for (let i = 0; i < 14; i++) {
    take(ws, solid, -size - right);
    out.status = solveMode(ws, mode);
    if (out.status !== SOLVED) return;
    const found = Math.sqrt(saturationRatio(ws, solid)) - 1;
    if (found >= 0) {
      search(ws, solid, mode, -size, found, right, rightExcess, -size, out);
      return;
    }
    right = -size;
    rightExcess = found;
    size *= 3;
  }
  out.status = NEGATIVE_CARBON;
}

/** Regula falsi with the Anderson–Björck weights, and a bisection when it creeps. `at0` is where the water stands. */
function search(
  ws: Workspace,
  solid: Solid,
  mode: CarbonateMode,
  left: number,
  leftExcess: number,
  right: number,
  rightExcess: number,
  at0: number,
  out: Precipitate,
): void {
  let a = left;
  let fa = leftExcess;
  let b = right;
  let fb = rightExcess;
  let here = at0;
  let side = 0;
  for (let i = 0; i < EVALUATIONS; i++) {
    const width = b - a;
    let x = i % 8 === 7 ? a + 0.5 * width : a + (width * fa) / (fa - fb);
    if (!(x > a && x < b)) x = a + 0.5 * width;
    take(ws, solid, x - here);
    here = x;
    out.molPerKg = x;
    out.status = solveMode(ws, mode);
    if (out.status !== SOLVED) return;
    const f = Math.sqrt(saturationRatio(ws, solid)) - 1;
    if (Math.abs(f) < TOLERANCE || width < 1e-15 + 1e-14 * Math.abs(x)) return;
    if (f > 0) {
      fb = side === 1 ? fb * weight(f, fa) : fb;
      a = x;
      fa = f;
      side = 1;
    } else {
      fa = side === -1 ? fa * weight(f, fb) : fa;
      b = x;
      fb = f;
      side = -1;
    }
  }
}

const weight = (found: number, replaced: number): number => {
  const w = 1 - found / replaced;
  return w > 0 ? w : 0.5;
};
