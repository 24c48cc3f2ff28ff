/** A stream of numbers from 0 to below 1. Streams are passed in; nothing here draws by itself. */
export type Random = () => number;

/** A repeatable stream from a whole-number seed (32-bit mixing generator; period 2³²). */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A standard normal number. */
export const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

export const between = (random: Random, low: number, high: number): number => low + (high - low) * random();

/** The index drawn in proportion to `weights`. */
export function drawIndex(random: Random, weights: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i]!;
  let left = random() * total;
  for (let i = 0; i < weights.length; i++) {
    left -= weights[i]!;
    if (left < 0) return i;
  }
  return weights.length - 1;
}
