import { CONSTITUENTS, type ConservedWater, type ConstituentId } from "./analysis.ts";
import { PLACES } from "./internal/layout.ts";
import type { Workspace } from "./internal/workspace.ts";

const at = PLACES;

const SPECIES_AT = {
  Ca: at.CA,
  Mg: at.MG,
  Na: at.NA,
  K: at.K,
  Cl: at.CL,
  SO4: at.SO4,
  NO3: at.NO3,
  F: at.F,
  H4SiO4: at.SI,
  CO3: at.CO3,
  HCO3: at.HCO3,
  CO2: at.CO2,
  CaCO3: at.CACO3,
  CaHCO3: at.CAHCO3,
  MgCO3: at.MGCO3,
  MgHCO3: at.MGHCO3,
  NaCO3: at.NACO3,
  NaHCO3: at.NAHCO3,
  CaSO4: at.CASO4,
  MgSO4: at.MGSO4,
  NaSO4: at.NASO4,
  KSO4: at.KSO4,
  HSO4: at.HSO4,
  CaOH: at.CAOH,
  MgOH: at.MGOH,
  HF: at.HF,
  MgF: at.MGF,
  NaF: at.NAF,
  H3SiO4: at.H3SIO4,
  H2SiO4: at.H2SIO4,
  OH: at.OH,
  H: at.H,
} as const;
export type SpeciesId = keyof typeof SPECIES_AT;

/** Saturation index log10(IAP/K) of each solid; −Infinity where an ion of the solid is absent. */
export interface SaturationIndices {
  readonly calcite: number;
  readonly aragonite: number;
  readonly gypsum: number;
  readonly anhydrite: number;
  readonly fluorite: number;
  readonly amorphousSilica: number;
  readonly chalcedony: number;
  readonly quartz: number;
}

/** A water solved: its conserved totals, pH, every species, and what it would lay down. */
export interface Water extends ConservedWater {
  readonly pH: number;
  readonly ionicStrengthMolPerKg: number;
  readonly waterActivity: number;
  /** Free ions and pairs, mol/kg. */
  readonly molality: Readonly<Record<SpeciesId, number>>;
  readonly activityCoefficient: { readonly Ca: number; readonly HCO3: number; readonly CO3: number };
  readonly saturation: SaturationIndices;
}

/** The workspace's state as a plain value. */
export function waterOf(ws: Workspace): Water {
  const molality: Partial<Record<SpeciesId, number>> = {};
  for (const id of Object.keys(SPECIES_AT) as SpeciesId[]) molality[id] = ws.molality[SPECIES_AT[id]]!;
  const totals: Partial<Record<ConstituentId, number>> = {};
  for (let i = 0; i < CONSTITUENTS.length; i++) totals[CONSTITUENTS[i]!] = ws.totals[i]!;
  const g = ws.gamma;
  return {
    temperatureC: ws.temperatureC,
    totals: totals as Record<ConstituentId, number>,
    alkalinityEqPerKg: ws.alkalinity,
    carbonMolPerKg: ws.carbon,
    pH: -Math.log10(ws.hydrogen),
    ionicStrengthMolPerKg: ws.ionicStrength,
    waterActivity: ws.waterActivity,
    molality: molality as Record<SpeciesId, number>,
    activityCoefficient: { Ca: g[at.CA]!, HCO3: g[at.HCO3]!, CO3: g[at.CO3]! },
    saturation: saturationOf(ws),
  };
}

function saturationOf(ws: Workspace): SaturationIndices {
  const v = new Float64Array(8);
  saturationInto(ws, v);
  return {
    calcite: v[0]!,
    aragonite: v[1]!,
    gypsum: v[2]!,
    anhydrite: v[3]!,
    fluorite: v[4]!,
    amorphousSilica: v[5]!,
    chalcedony: v[6]!,
    quartz: v[7]!,
  };
}

/** Writes the indices in the order of `SaturationIndices`; allocates nothing. */
export function saturationInto(ws: Workspace, out: Float64Array): void {
  const { molality: m, gamma: g, k, waterActivity: w } = ws;
  const ca = m[at.CA]! * g[at.CA]!;
  const co3 = m[at.CO3]! * g[at.CO3]!;
  const so4 = m[at.SO4]! * g[at.SO4]!;
  const f = m[at.F]! * g[at.F]!;
  const silica = (m[at.SI]! * g[at.SI]!) / (w * w);
  out[0] = Math.log10((ca * co3) / k[at.K_CALCITE]!);
  out[1] = Math.log10((ca * co3) / k[at.K_ARAGONITE]!);
  out[2] = Math.log10((ca * so4 * w * w) / k[at.K_GYPSUM]!);
  out[3] = Math.log10((ca * so4) / k[at.K_ANHYDRITE]!);
  out[4] = Math.log10((ca * f * f) / k[at.K_FLUORITE]!);
  out[5] = Math.log10(silica / k[at.K_SILICA]!);
  out[6] = Math.log10(silica / k[at.K_CHALCEDONY]!);
  out[7] = Math.log10(silica / k[at.K_QUARTZ]!);
}
