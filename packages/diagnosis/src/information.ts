/**
 * What is left open by odds, bits. The odds are taken as shares of their sum.
 *
 * Formula: −Σ p log₂ p
 * Source: Shannon (1948), textbook.
 * Range: any odds of 0 or more.
 * Error: none.
 */
export function openBits(odds: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < odds.length; i++) total += odds[i]!;
  let bits = 0;
  for (let i = 0; i < odds.length; i++) {
    const p = odds[i]! / total;
    if (p > 1e-9) bits -= p * Math.log2(p);
  }
  return bits;
}

/** An outcome of a test: how likely, and the odds after it. */
export interface Outlook {
  readonly weight: number;
  readonly odds: ArrayLike<number>;
}

/**
 * Bits a test is expected to settle.
 *
 * Formula: H(now) − Σ w H(after)
 * Source: de Kleer and Williams, Diagnosing multiple faults (1987): the measurement of least expected entropy.
 * Range: weights that add up to 1.
 * Error: that of the outcomes; never below 0 for exact ones.
 */
export const settledBits = (now: ArrayLike<number>, outlooks: readonly Outlook[]): number =>
  openBits(now) - outlooks.reduce((sum, { weight, odds }) => sum + weight * openBits(odds), 0);
