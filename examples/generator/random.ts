/** A stream of random numbers that depends only on its words. */
export interface Random {
  /** Evenly in [0, 1). */
  readonly unit: () => number;
  readonly between: (low: number, high: number) => number;
  readonly whole: (low: number, high: number) => number;
  readonly normal: () => number;
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(from: readonly T[]) => T;
}

/** 32-bit FNV-1a of a text. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

/** Mulberry32 seeded by words, so that one unit's numbers do not move when another unit is added. */
export function randomOf(...words: readonly (string | number)[]): Random {
  let state = hashOf(words.join("|"));
  const unit = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const between = (low: number, high: number) => low + (high - low) * unit();
  const whole = (low: number, high: number) => Math.floor(between(low, high + 1));
  const normal = () => Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit());
  return {
    unit,
    between,
    whole,
    normal,
    chance: (share) => unit() < share,
    pick: (from) => from[whole(0, from.length - 1)]!,
  };
}

/** The same things in another order. */
export function shuffled<T>(things: readonly T[], random: Random): T[] {
  const out = [...things];
  for (let i = out.length - 1; i > 0; i--) {
    const j = random.whole(0, i);
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
}
