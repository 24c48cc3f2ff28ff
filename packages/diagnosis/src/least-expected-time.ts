/**
 * What to try next among things that end the search with chance p and cost minutes: the smaller, the earlier.
 *
 * Formula: minutes/p
 * Source: Kalagnanam and Henrion, arXiv 1304.2362: the order of least expected time for one fault and perfect tests.
 * Range: one fault; every try finds or clears its cause for certain.
 * Error: not the best order where tests share a set-up.
 */
export const leastExpectedTime = (minutes: number, chance: number): number =>
  minutes / Math.max(chance, 1e-9);
