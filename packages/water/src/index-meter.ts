import { CACO3_G_PER_MOL, CACO3_MG_PER_MEQ, CONSTITUENTS, MOLAR_MASS } from "./analysis.ts";
import { CALCITE, equilibrate, type Precipitate } from "./internal/precipitate.ts";
import { SOLVE_REFUSALS, SOLVED, solveAtPh } from "./internal/solve.ts";
import { BY_CARBON } from "./internal/sweep.ts";
import { createWorkspace, setTemperature } from "./internal/workspace.ts";
import { saturationInto } from "./water.ts";

/**
 * Indices of many waters without allocating: fill `input`, call, read `output`.
 * Input: temperature °C, pH, alkalinity mg/L as CaCO3, then mg/L in the order of `CONSTITUENTS`.
 * Output: the saturation indices in the order of `SaturationIndices`, CCPP in mg/L as CaCO3, pH after it.
 */
export interface IndexMeter {
  readonly input: Float64Array;
  readonly output: Float64Array;
  /** "" when solved, otherwise the refusal's code. Inputs are taken as already checked. */
  readonly indices: () => string;
  readonly indicesAndPotential: () => string;
}

const IONS_FROM = 3;
const MOL_PER_MG = CONSTITUENTS.map((id) => 1 / 1000 / MOLAR_MASS[id]);

/**
 * The speciation of `speciate` for whole tables, samples and curves, with one workspace of its own.
 *
 * Source, Range, Error: as `speciate` and `precipitationPotential`.
 */
export function createIndexMeter(): IndexMeter {
  const ws = createWorkspace();
  const removed: Precipitate = { status: SOLVED, molPerKg: 0 };
  const input = new Float64Array(IONS_FROM + CONSTITUENTS.length);
  const output = new Float64Array(10);
  const solve = (): number => {
    setTemperature(ws, input[0]!);
    ws.hydrogen = 10 ** -input[1]!;
    ws.alkalinity = input[2]! / CACO3_MG_PER_MEQ / 1000;
    for (let i = 0; i < MOL_PER_MG.length; i++) ws.totals[i] = input[IONS_FROM + i]! * MOL_PER_MG[i]!;
    const status = solveAtPh(ws);
    if (status === SOLVED) saturationInto(ws, output);
    return status;
  };
  const indices = () => SOLVE_REFUSALS[solve()]!;
  const indicesAndPotential = () => {
    const status = solve();
    if (status !== SOLVED) return SOLVE_REFUSALS[status]!;
    equilibrate(ws, CALCITE, BY_CARBON, true, removed);
    output[8] = removed.molPerKg * CACO3_G_PER_MOL * 1000;
    output[9] = -Math.log10(ws.hydrogen);
    return SOLVE_REFUSALS[removed.status]!;
  };
  return { input, output, indices, indicesAndPotential };
}
