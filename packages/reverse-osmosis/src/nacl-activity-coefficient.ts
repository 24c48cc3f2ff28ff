import { naclPitzer } from "./nacl-osmotic-coefficient.ts";

/**
 * Mean activity coefficient of sodium chloride at 25 °C (a cross-check of the osmotic coefficient).
 *
 * Formula: ln γ = −Aφ[√m/(1+b√m) + (2/b) ln(1+b√m)] + m·Bγ + 1.5 m² Cφ,
 * Bγ = 2β0 + 2β1/(α²m)·[1 − e^(−α√m)(1 + α√m − α²m/2)]
 * Source: Pitzer & Mayorga, J. Phys. Chem. 77 (1973).
 * Range: 0 to 6 mol/kg.
 * Error: within 0.4 % of J. Phys. Chem. Ref. Data 13(1) (1984) p. 53.
 * @example
 * ```ts
 * import { naclActivityCoefficient } from "@tapside/reverse-osmosis";
 * naclActivityCoefficient(1); // => 0.655
 * ```
 */
export function naclActivityCoefficient(molality: number): number {
  if (molality === 0) return 1;
  const { debye, b, alpha, beta0, beta1, cPhi } = naclPitzer;
  const root = Math.sqrt(molality);
  const longRange = -debye * (root / (1 + b * root) + (2 / b) * Math.log(1 + b * root));
  const ax = alpha * root;
  const short = 1 - Math.exp(-ax) * (1 + ax - (ax * ax) / 2);
  const pair = 2 * beta0 + ((2 * beta1) / (ax * ax)) * short;
  return Math.exp(longRange + molality * pair + 1.5 * molality * molality * cPhi);
}
