import { CACO3_G_PER_MOL, MOLAR_MASS } from "./analysis.ts";

/** mg/L as CaCO3 in one unit of hardness: derived, never copied (printed tables swap some of them). */
export const HARDNESS_UNIT_MG_PER_L_CACO3 = {
  "mg/L CaCO3": 1,
  /** US grain per US gallon: 64.79891 mg in 3.785411784 L. */
  gpg: 64.79891 / 3.785411784,
  /** German degree: 10 mg CaO per litre. */
  dH: (10 * 100.0869) / 56.0774,
  /** French degree: 10 mg CaCO3 per litre. */
  fH: 10,
  /** Clark degree: a grain per imperial gallon. */
  Clark: 64.79891 / 4.54609,
  "mmol/L": 100.0869,
} as const;
export type HardnessUnit = keyof typeof HARDNESS_UNIT_MG_PER_L_CACO3;

/**
 * Hardness from one unit into another.
 *
 * Source: definitions of the units (https://wiktel.com/standards/hardnes.htm) and molar masses. Error: none.
 *
 * @example
 * ```ts
 * import { convertHardness } from "@tapside/water";
 * convertHardness(1, "gpg", "mg/L CaCO3"); // => 17.118
 * convertHardness(1, "dH", "mg/L CaCO3"); // => 17.848
 * ```
 */
export function convertHardness(value: number, from: HardnessUnit, to: HardnessUnit): number {
  return (value * HARDNESS_UNIT_MG_PER_L_CACO3[from]) / HARDNESS_UNIT_MG_PER_L_CACO3[to];
}

/**
 * Total hardness, mg/L as CaCO3, from calcium and magnesium as the ions.
 *
 * Source: ratios of molar masses. Error: none of its own.
 *
 * @example
 * ```ts
 * import { hardnessFromIons } from "@tapside/water";
 * hardnessFromIons(100, 30); // => 373.2
 * ```
 */
export function hardnessFromIons(calciumMgPerL: number, magnesiumMgPerL: number): number {
  return (calciumMgPerL / MOLAR_MASS.Ca + magnesiumMgPerL / MOLAR_MASS.Mg) * CACO3_G_PER_MOL;
}
