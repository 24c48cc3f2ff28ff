/** Pitzer constants of sodium chloride at 25 °C. Source: Pitzer & Mayorga 1973, Table I; A_φ, b, α of the 1:1 form. */
export const naclPitzer = {
  debye: 0.392,
  b: 1.2,
  alpha: 2,
  beta0: 0.0765,
  beta1: 0.2664,
  cPhi: 0.00127,
} as const;

/**
 * Osmotic coefficient φ of sodium chloride at 25 °C; 1 would be the ideal solution.
 *
 * Formula: 1 − Aφ√m/(1 + b√m) + m(β0 + β1 e^(−α√m)) + m²Cφ
 * Source: Pitzer & Mayorga, J. Phys. Chem. 77 (1973), Table I.
 * Range: 0 to 6 mol/kg.
 * Error: within 0.1 % of Robinson & Stokes 0.1 to 2 mol/kg.
 * @example
 * ```ts
 * import { naclOsmoticCoefficient } from "@tapside/reverse-osmosis";
 * naclOsmoticCoefficient(0.1); // => 0.932
 * ```
 */
export function naclOsmoticCoefficient(molality: number): number {
  const root = Math.sqrt(molality);
  const { debye, b, alpha, beta0, beta1, cPhi } = naclPitzer;
  const pair = beta0 + beta1 * Math.exp(-alpha * root);
  return 1 - (debye * root) / (1 + b * root) + molality * pair + molality * molality * cPhi;
}
