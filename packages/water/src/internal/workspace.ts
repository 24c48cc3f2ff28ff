import { LOG_K } from "../constants.ts";
import { debyeHuckel } from "../debye-huckel.ts";
import { PLACES } from "./layout.ts";

const at = PLACES;

/** Everything one solve needs, allocated once and written over. */
export interface Workspace {
  temperatureC: number;
  debyeA: number;
  debyeB: number;
  /** Conserved: mol/kg of each constituent, eq/kg of alkalinity, mol/kg of inorganic carbon. */
  readonly totals: Float64Array;
  alkalinity: number;
  carbon: number;
  /** Activity of H+; molality of CO2 when a gas holds it. */
  hydrogen: number;
  gasCo2Activity: number;
  ionicStrength: number;
  strengthOfGammas: number;
  waterActivity: number;
  readonly molality: Float64Array;
  readonly gamma: Float64Array;
  /** K at this temperature, and the same with activity coefficients folded in. */
  readonly k: Float64Array;
  readonly conditional: Float64Array;
  /** Alkalinity outside the carbonate species, and its slopes, left by the last sweep. */
  residual: number;
  slope: number;
  change: number;
}

export function createWorkspace(): Workspace {
  return {
    temperatureC: Number.NaN,
    debyeA: 0.51,
    debyeB: 0.3285,
    totals: new Float64Array(at.TOTALS),
    alkalinity: 0,
    carbon: 0,
    hydrogen: 1e-7,
    gasCo2Activity: 0,
    ionicStrength: 0,
    strengthOfGammas: -1,
    waterActivity: 1,
    molality: new Float64Array(at.SPECIES),
    gamma: new Float64Array(at.SPECIES).fill(1),
    k: new Float64Array(at.CONSTANTS),
    conditional: new Float64Array(at.SPECIES),
    residual: 0,
    slope: 0,
    change: 0,
  };
}

const PLAIN = [
  [at.CACO3, "CaCO3"],
  [at.MGCO3, "MgCO3"],
  [at.NACO3, "NaCO3"],
  [at.CASO4, "CaSO4"],
  [at.MGSO4, "MgSO4"],
  [at.NASO4, "NaSO4"],
  [at.KSO4, "KSO4"],
  [at.HSO4, "HSO4"],
  [at.CAOH, "CaOH"],
  [at.MGOH, "MgOH"],
  [at.HF, "HF"],
  [at.MGF, "MgF"],
  [at.NAF, "NaF"],
  [at.H3SIO4, "H3SiO4"],
  [at.H2SIO4, "H2SiO4"],
  [at.OH, "water"],
  [at.K_CALCITE, "calcite"],
  [at.K_ARAGONITE, "aragonite"],
  [at.K_GYPSUM, "gypsum"],
  [at.K_ANHYDRITE, "anhydrite"],
  [at.K_FLUORITE, "fluorite"],
  [at.K_SILICA, "amorphousSilica"],
  [at.K_CHALCEDONY, "chalcedony"],
  [at.K_QUARTZ, "quartz"],
  [at.K_GAS, "carbonDioxideGas"],
] as const;

/** Constants at a temperature; nothing is done when the workspace already stands there. */
export function setTemperature(ws: Workspace, temperatureC: number): void {
  if (ws.temperatureC === temperatureC) return;
  const kelvin = temperatureC + 273.15;
  for (let i = 0; i < PLAIN.length; i++) {
    const pair = PLAIN[i]!;
    ws.k[pair[0]] = Math.exp(Math.LN10 * LOG_K[pair[1]](kelvin));
  }
  fromCarbonate(ws, kelvin);
  const { a, bPerAngstrom } = debyeHuckel(temperatureC);
  ws.debyeA = a;
  ws.debyeB = bPerAngstrom;
  ws.temperatureC = temperatureC;
  ws.strengthOfGammas = -1;
}

/** The protonated carbonate species, all written from CO3-2 and H+. */
function fromCarbonate(ws: Workspace, kelvin: number): void {
  const { k } = ws;
  const lk2 = LOG_K.k2(kelvin);
  const power = (log: number) => Math.exp(Math.LN10 * log);
  k[at.HCO3] = power(-lk2);
  k[at.CO2] = power(-lk2 - LOG_K.k1(kelvin));
  k[at.CAHCO3] = power(LOG_K.CaHCO3(kelvin) - lk2);
  k[at.MGHCO3] = power(LOG_K.MgHCO3(kelvin) - lk2);
  k[at.NAHCO3] = power(LOG_K.NaHCO3(kelvin) - lk2);
}
