/**
 * Squared distance of odds from what turned out, summed over all causes: 0 is perfect, 2 the worst.
 *
 * Formula: Σ (pᵢ − oᵢ)²
 * Source: Brier (1950) as in the AMS Glossary of Meteorology. Of two outcomes it is twice the figure of one.
 * Range: odds that add up to 1.
 * Error: none.
 */
export function brier(odds: ArrayLike<number>, truth: number): number {
  let sum = 0;
  for (let i = 0; i < odds.length; i++) sum += (odds[i]! - (i === truth ? 1 : 0)) ** 2;
  return sum;
}
