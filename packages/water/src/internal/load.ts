import { type Outcome, refused } from "@tapside/quantities";
import {
  CACO3_MG_PER_MEQ,
  CONSTITUENTS,
  type ConservedWater,
  MOLAR_MASS,
  type WaterAnalysis,
} from "../analysis.ts";
import { SOLVE_REFUSALS } from "./solve.ts";
import { setTemperature, type Workspace } from "./workspace.ts";

/** Highest sum of totals the activity model answers for, mol/kg. */
const LARGEST_TOTAL = 2;

/** The refusal of an input that is no water, or undefined. */
export function inputRefusal(values: Readonly<Record<string, number>>): Outcome<never> | undefined {
  for (const [name, value] of Object.entries(values))
    if (!Number.isFinite(value)) return refused("not-a-number", { input: name });
  const { temperatureC } = values;
  if (temperatureC !== undefined && (temperatureC < 0 || temperatureC > 160))
    return refused("temperature-out-of-range", { temperatureC, lowC: 0, highC: 160 });
  return undefined;
}

function totalsRefusal(ws: Workspace): Outcome<never> | undefined {
  let sum = 0;
  for (let i = 0; i < CONSTITUENTS.length; i++) {
    const value = ws.totals[i]!;
    if (!Number.isFinite(value)) return refused("not-a-number", { input: CONSTITUENTS[i]! });
    if (value < 0) return refused("negative-concentration", { constituent: CONSTITUENTS[i]! });
    sum += value;
  }
  if (sum > LARGEST_TOTAL)
    return refused("too-concentrated", { molPerKg: sum, highestMolPerKg: LARGEST_TOTAL });
  return undefined;
}

/** Reads an analysis into the workspace; answers the refusal of what is no water. */
export function loadAnalysis(ws: Workspace, analysis: WaterAnalysis): Outcome<never> | undefined {
  const { temperatureC, pH, alkalinityMgPerLCaCO3 } = analysis;
  const bad = inputRefusal({ temperatureC, pH, alkalinityMgPerLCaCO3 });
  if (bad) return bad;
  if (pH < 0 || pH > 14) return refused("ph-out-of-range", { pH, low: 0, high: 14 });
  setTemperature(ws, temperatureC);
  for (let i = 0; i < CONSTITUENTS.length; i++) {
    const id = CONSTITUENTS[i]!;
    ws.totals[i] = (analysis.ions[id] ?? 0) / 1000 / MOLAR_MASS[id];
  }
  ws.alkalinity = alkalinityMgPerLCaCO3 / CACO3_MG_PER_MEQ / 1000;
  ws.hydrogen = 10 ** -pH;
  if (Math.abs(ws.alkalinity) > LARGEST_TOTAL) return refused("too-concentrated", { alkalinityMgPerLCaCO3 });
  return totalsRefusal(ws);
}

/**
 * Reads conserved totals into the workspace. Negative sodium is kept: a stream whose sodium closes a charge balance
 * may need it, and it then carries the imbalance.
 */
export function loadConserved(ws: Workspace, water: ConservedWater): Outcome<never> | undefined {
  const { temperatureC, alkalinityEqPerKg, carbonMolPerKg } = water;
  const bad = inputRefusal({ temperatureC, alkalinityEqPerKg, carbonMolPerKg });
  if (bad) return bad;
  setTemperature(ws, temperatureC);
  for (let i = 0; i < CONSTITUENTS.length; i++) ws.totals[i] = water.totals[CONSTITUENTS[i]!];
  ws.totals[2] = Math.max(ws.totals[2]!, 0);
  ws.alkalinity = alkalinityEqPerKg;
  ws.carbon = carbonMolPerKg;
  ws.hydrogen = 1e-7;
  if (carbonMolPerKg > LARGEST_TOTAL) return refused("too-concentrated", { carbonMolPerKg });
  return totalsRefusal(ws);
}

export const solveRefusal = (status: number, ws: Workspace): Outcome<never> =>
  refused(SOLVE_REFUSALS[status] ?? "not-converged", {
    temperatureC: ws.temperatureC,
    alkalinityMgPerLCaCO3: ws.alkalinity * CACO3_MG_PER_MEQ * 1000,
  });
