import { known, type Outcome } from "@tapside/quantities";
import { CACO3_MG_PER_MEQ, CHARGE, CONSTITUENTS, MOLAR_MASS, type WaterAnalysis } from "./analysis.ts";
import { conductivityAt25 } from "./conductivity.ts";
import { speciate } from "./speciate.ts";

/** A unit slip that would mend a broken charge balance. */
export type UnitSuspicion =
  | "calcium-given-as-CaCO3"
  | "magnesium-given-as-CaCO3"
  | "hardness-ions-given-as-CaCO3"
  | "hardness-ions-in-grains-per-gallon"
  | "alkalinity-given-as-bicarbonate"
  | "alkalinity-in-grains-per-gallon"
  | "nitrate-given-as-nitrogen";

/** How well an analysis agrees with itself and with a measured conductivity. */
export interface AnalysisQuality {
  /** 100 (cations − anions)/(cations + anions), alkalinity in equivalents. */
  readonly chargeImbalancePercent: number;
  readonly calculatedEc25UsPerCm: number;
  /** Calculated over measured; absent when no conductivity was read. */
  readonly conductivityRatio?: number;
  /** Slips that alone would bring the charge balance within 3 %, best first; empty when it is within 5 % already. */
  readonly suspicions: readonly UnitSuspicion[];
}

/** Charge balance in percent, positive when cations are in excess. */
export function chargeImbalancePercent(analysis: WaterAnalysis): number {
  let cations = 0;
  let anions = analysis.alkalinityMgPerLCaCO3 / CACO3_MG_PER_MEQ;
  for (const id of CONSTITUENTS) {
    const meq = ((analysis.ions[id] ?? 0) / MOLAR_MASS[id]) * CHARGE[id];
    if (meq > 0) cations += meq;
    else anions -= meq;
  }
  return cations + anions > 0 ? (100 * (cations - anions)) / (cations + anions) : 0;
}

const GRAIN = 17.118;
/** mg of the ion in one mg as CaCO3. */
const CA_IN_CACO3 = MOLAR_MASS.Ca / 100.09;
const MG_IN_CACO3 = MOLAR_MASS.Mg / 100.09;

function scaled(
  analysis: WaterAnalysis,
  ions: Readonly<Record<string, number>>,
  alkalinity = 1,
): WaterAnalysis {
  const changed = Object.entries(ions).map(([id, factor]) => [id, (analysis.ions[id as "Ca"] ?? 0) * factor]);
  return {
    ...analysis,
    alkalinityMgPerLCaCO3: analysis.alkalinityMgPerLCaCO3 * alkalinity,
    ions: { ...analysis.ions, ...Object.fromEntries(changed) },
  };
}

const SLIPS: readonly (readonly [UnitSuspicion, (a: WaterAnalysis) => WaterAnalysis])[] = [
  ["calcium-given-as-CaCO3", (a) => scaled(a, { Ca: CA_IN_CACO3 })],
  ["magnesium-given-as-CaCO3", (a) => scaled(a, { Mg: MG_IN_CACO3 })],
  ["hardness-ions-given-as-CaCO3", (a) => scaled(a, { Ca: CA_IN_CACO3, Mg: MG_IN_CACO3 })],
  [
    "hardness-ions-in-grains-per-gallon",
    (a) => scaled(a, { Ca: GRAIN * CA_IN_CACO3, Mg: GRAIN * MG_IN_CACO3 }),
  ],
  ["alkalinity-given-as-bicarbonate", (a) => scaled(a, {}, 0.8202)],
  ["alkalinity-in-grains-per-gallon", (a) => scaled(a, {}, GRAIN)],
  ["nitrate-given-as-nitrogen", (a) => scaled(a, { NO3: 4.4268 })],
];

function suspicionsOf(analysis: WaterAnalysis): UnitSuspicion[] {
  if (Math.abs(chargeImbalancePercent(analysis)) <= 5) return [];
  return SLIPS.map(([name, mend]) => ({ name, left: Math.abs(chargeImbalancePercent(mend(analysis))) }))
    .filter(({ left }) => left <= 3)
    .sort((a, b) => a.left - b.left)
    .map(({ name }) => name);
}

/**
 * Charge balance, agreement with a measured conductivity, and unit slips suspected. Suspicions are questions to ask of
 * the report, never corrections made silently.
 *
 * Source: charge balance within 5 % is laboratory habit (common practice, no source). Range: as `speciate`.
 */
export function analysisQuality(analysis: WaterAnalysis, measuredEc25?: number): Outcome<AnalysisQuality> {
  const solved = speciate(analysis);
  if (solved.kind !== "known") return solved;
  const ec = conductivityAt25(solved.value);
  if (ec.kind !== "known") return ec;
  const quality = {
    chargeImbalancePercent: chargeImbalancePercent(analysis),
    calculatedEc25UsPerCm: ec.value,
    suspicions: suspicionsOf(analysis),
  };
  return known(
    measuredEc25 !== undefined && measuredEc25 > 0
      ? { ...quality, conductivityRatio: ec.value / measuredEc25 }
      : quality,
  );
}
