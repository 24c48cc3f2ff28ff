import { known, type Outcome, refused } from "@tapside/quantities";
import { CACO3_MG_PER_MEQ, MOLAR_MASS } from "./analysis.ts";

/** Langelier index pH − pHs. Source: UFC 3-240-13FN, App. B. Range, Error: those of pHs. */
export const langelierIndex = (pH: number, saturationPh: number): number => pH - saturationPh;

/**
 * Ryznar stability index 2 pHs − pH.
 *
 * Source: UFC 3-240-13FN (2005), App. B. Range, Error: those of pHs.
 *
 * @example
 * ```ts
 * import { ryznarIndex } from "@tapside/water";
 * ryznarIndex(8.2, 6.77); // => 5.34
 * ```
 */
export const ryznarIndex = (pH: number, saturationPh: number): number => 2 * saturationPh - pH;

/** Equilibrium pH of Puckorius, 1.465 log(alkalinity) + 4.54 (UFC text prints 1.485; its own table needs 1.465). */
export function puckoriusPh(alkalinityMgPerLCaCO3: number): Outcome<number> {
  if (!(alkalinityMgPerLCaCO3 > 0)) return refused("not-positive", { alkalinityMgPerLCaCO3 });
  return known(1.465 * Math.log10(alkalinityMgPerLCaCO3) + 4.54);
}

/**
 * Puckorius scaling index 2 pHs − pHeq.
 *
 * Source: UFC 3-240-13FN (2005), App. B. Range, Error: those of pHs.
 */
export function puckoriusIndex(saturationPh: number, alkalinityMgPerLCaCO3: number): Outcome<number> {
  const equilibrium = puckoriusPh(alkalinityMgPerLCaCO3);
  return equilibrium.kind === "known" ? known(2 * saturationPh - equilibrium.value) : equilibrium;
}

/**
 * Larson–Skold index (Cl + SO4)/(HCO3 + CO3), in equivalents, alkalinity standing for the carbonate.
 * Below 0.8 chloride and sulfate hardly disturb a film; 0.8–1.2 may; above 1.2 high rates (second hand: Roberge 2006).
 *
 * Source: corrosion-doctors.org Index-Larson-Skold; 35 Ill. Adm. Code 604.900. Range: derived for cold lake water.
 *
 * @example
 * ```ts
 * import { larsonSkoldIndex } from "@tapside/water";
 * larsonSkoldIndex(40, 62, 245); // => { kind: "known", value: 0.494 }
 * ```
 */
export function larsonSkoldIndex(
  chlorideMgPerL: number,
  sulfateMgPerL: number,
  alkalinityMgPerLCaCO3: number,
): Outcome<number> {
  if (!(alkalinityMgPerLCaCO3 > 0)) return refused("not-positive", { alkalinityMgPerLCaCO3 });
  const strong = chlorideMgPerL / MOLAR_MASS.Cl + (2 * sulfateMgPerL) / MOLAR_MASS.SO4;
  return known(strong / (alkalinityMgPerLCaCO3 / CACO3_MG_PER_MEQ));
}

/**
 * Aggressive index pH + log(alkalinity × calcium hardness), both mg/L as CaCO3.
 *
 * Source: AWWA C400 as quoted at nastt.org/glossary; classes < 10, 10–12, ≥ 12 from memory, unverified.
 *
 * @example
 * ```ts
 * import { aggressiveIndex } from "@tapside/water";
 * aggressiveIndex(8.0, 150, 100); // => { kind: "known", value: 12.18 }
 * ```
 */
export function aggressiveIndex(
  pH: number,
  alkalinityMgPerLCaCO3: number,
  calciumHardnessMgPerLCaCO3: number,
): Outcome<number> {
  const product = alkalinityMgPerLCaCO3 * calciumHardnessMgPerLCaCO3;
  if (!(product > 0)) return refused("not-positive", { alkalinityMgPerLCaCO3, calciumHardnessMgPerLCaCO3 });
  return known(pH + Math.log10(product));
}

/**
 * Concentration of an ion in the concentrate of a split: c (1 − y SP)/(1 − y).
 *
 * Source: ASTM RO practice, section 7.1 (public copy). Range: recovery y below 1.
 *
 * @example
 * ```ts
 * import { concentrateConcentration } from "@tapside/water";
 * concentrateConcentration(200, 0.75, 0.05); // => { kind: "known", value: 770 }
 * ```
 */
export function concentrateConcentration(
  feedMgPerL: number,
  recovery: number,
  saltPassage: number,
): Outcome<number> {
  if (!(recovery >= 0 && recovery < 1)) return refused("recovery-out-of-range", { recovery });
  return known((feedMgPerL * (1 - recovery * saltPassage)) / (1 - recovery));
}

/** Dissolved CO2 by the bedside formula 1.60 × 10^(6 − pH) × HCO3, mg/L; only near 25 °C and in dilute water. Source: Skougstad 1979, second hand. */
export const approximateCo2 = (pH: number, bicarbonateMgPerL: number): number =>
  1.6 * 10 ** (6 - pH) * bicarbonateMgPerL;
