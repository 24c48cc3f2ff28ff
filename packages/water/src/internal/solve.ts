import { PLACES } from "./layout.ts";
import { BY_ALKALINITY, BY_CARBON, BY_GAS, type CarbonateMode, otherAlkalinity, sweep } from "./sweep.ts";
import type { Workspace } from "./workspace.ts";

const at = PLACES;

/** How a solve ended: 0 well, otherwise the place of its name in `SOLVE_REFUSALS`. */
export const SOLVED = 0;
export const HYDROXIDE_EXCEEDS_ALKALINITY = 1;
export const NEGATIVE_CARBON = 2;
export const NO_PH_BETWEEN_0_AND_14 = 3;
export const NOT_CONVERGED = 4;
export const SOLVE_REFUSALS = [
  "",
  "hydroxide-exceeds-alkalinity",
  "negative-carbon",
  "no-ph-between-0-and-14",
  "not-converged",
] as const;

const TOLERANCE = 1e-10;
const SWEEPS = 400;
const LOWEST_LN_H = -14.2 * Math.LN10;
const HIGHEST_LN_H = 0;

/** A first guess that depends on the totals alone, so that the answer never depends on the previous water. */
export function startFresh(ws: Workspace): void {
  const { molality: m, totals: t } = ws;
  m.fill(0);
  for (let i = 0; i < at.TOTALS; i++) m[i] = t[i]!;
  const twos = t[at.CA]! + t[at.MG]! + t[at.SO4]!;
  const ones = t[at.NA]! + t[at.K]! + t[at.CL]! + t[at.NO3]! + Math.abs(ws.alkalinity);
  ws.ionicStrength = Math.min(2 * twos + 0.5 * ones + 1e-7, 3);
  ws.waterActivity = 1;
  ws.strengthOfGammas = -1;
}

/** pH and alkalinity given: carbonate from the alkalinity, total carbon follows. */
export function solveAtPh(ws: Workspace): number {
  startFresh(ws);
  for (let i = 0; i < SWEEPS; i++) {
    sweep(ws, BY_ALKALINITY);
    if (ws.change < TOLERANCE) return carbonOf(ws);
  }
  return NOT_CONVERGED;
}

function carbonOf(ws: Workspace): number {
  const m = ws.molality;
  const left = ws.alkalinity - otherAlkalinity(m);
  if (left < -1e-12 - 1e-9 * Math.abs(ws.alkalinity)) return HYDROXIDE_EXCEEDS_ALKALINITY;
  ws.carbon = totalCarbon(m);
  return SOLVED;
}

/** Inorganic carbon in all its species, mol/kg. */
export function totalCarbon(m: Float64Array): number {
  let sum = 0;
  for (let i = at.CO3; i <= at.NAHCO3; i++) sum += m[i]!;
  return sum;
}

/** Alkalinity and total carbon given: solves pH. Starts from the state the workspace is in. */
export function solveClosed(ws: Workspace): number {
  if (ws.carbon < 0) return ws.carbon < -1e-14 ? NEGATIVE_CARBON : noCarbon(ws);
  return solvePh(ws, BY_CARBON);
}

function noCarbon(ws: Workspace): number {
  ws.carbon = 0;
  return solvePh(ws, BY_CARBON);
}

/** Alkalinity given, CO2 held by a gas: solves pH; total carbon follows. */
export function solveOpen(ws: Workspace): number {
  const status = solvePh(ws, BY_GAS);
  if (status === SOLVED) ws.carbon = totalCarbon(ws.molality);
  return status;
}

/** Newton on ln a(H+) interleaved with the sweeps; bisection when that does not settle. Always ends. */
function solvePh(ws: Workspace, mode: CarbonateMode): number {
  let lnH = Math.log(ws.hydrogen > 0 ? ws.hydrogen : 1e-7);
  let limit = 2;
  let before = 0;
  for (let i = 0; i < 60; i++) {
    ws.hydrogen = Math.exp(lnH);
    sweep(ws, mode);
    const step = clamp(-ws.residual / (ws.slope - 1e-20), limit);
    if (!Number.isFinite(step)) break;
    if (Math.abs(step) < TOLERANCE && ws.change < TOLERANCE * 10) return withinRange(lnH);
    if (step * before < 0) limit *= 0.7;
    before = step;
    lnH += step;
    if (lnH < LOWEST_LN_H - 5 || lnH > HIGHEST_LN_H + 5) break;
  }
  return bisectPh(ws, mode);
}

const clamp = (x: number, limit: number) => Math.min(Math.max(x, -limit), limit);

const withinRange = (lnH: number) =>
  lnH < LOWEST_LN_H || lnH > HIGHEST_LN_H ? NO_PH_BETWEEN_0_AND_14 : SOLVED;

function bisectPh(ws: Workspace, mode: CarbonateMode): number {
  let low = LOWEST_LN_H;
  let high = HIGHEST_LN_H;
  if (residualAt(ws, mode, high) > 0 || residualAt(ws, mode, low) < 0) return NO_PH_BETWEEN_0_AND_14;
  for (let i = 0; i < 70; i++) {
    const middle = 0.5 * (low + high);
    if (residualAt(ws, mode, middle) > 0) low = middle;
    else high = middle;
  }
  residualAt(ws, mode, 0.5 * (low + high));
  return ws.change < 1e-6 ? SOLVED : NOT_CONVERGED;
}

/** Alkalinity residual with the pairs settled at a given ln a(H+). */
function residualAt(ws: Workspace, mode: CarbonateMode, lnH: number): number {
  startFresh(ws);
  ws.hydrogen = Math.exp(lnH);
  for (let i = 0; i < SWEEPS; i++) {
    sweep(ws, mode);
    if (ws.change < TOLERANCE) break;
  }
  return ws.residual;
}
