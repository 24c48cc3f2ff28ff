/**
 * A hybrid logical clock stamp, `2026-11-25T11:21:01.000Z/0000`: milliseconds, then a counter.
 * It has a fixed length, so stamps compare as text.
 * Source: Kulkarni, Demirbas, Madappa, Avva, Leone, "Logical Physical Clocks", OPODIS 2014, figure 5.
 */
export type Stamp = string;

/** The stamp before every other. */
export const NO_STAMP: Stamp = "0000-01-01T00:00:00.000Z/0000";

const PATTERN = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z\/[0-9a-f]{4}$/;

const LAST_COUNT = 0xffff;

/** How far a stamp may run ahead of this device's wall clock before it is pointed out. */
const AHEAD_LIMIT_MS = 24 * 3600 * 1000;

export const isStamp = (text: string): boolean => PATTERN.test(text) && !Number.isNaN(msOf(text));

/** The milliseconds since 1970 that a stamp carries. */
export const msOf = (stamp: Stamp): number => Date.parse(stamp.slice(0, 24));

/** The stamp of the next change on this device. Always later than `newest`, however the wall clock stands. */
export function nextStamp(newest: Stamp, wallMs: number): Stamp {
  const ms = msOf(newest);
  if (wallMs > ms) return stampOf(wallMs, 0);
  const count = Number.parseInt(newest.slice(25), 16);
  return count < LAST_COUNT ? stampOf(ms, count + 1) : stampOf(ms + 1, 0);
}

/**
 * Takes in a stamp made elsewhere. The clock moves up to it whatever the skew, because an edit made after
 * seeing another must win over it; a stamp further ahead than a day is pointed out by `tooFarAhead`, and
 * since own stamps then only count up from it, time stands still there until the wall clock has caught up.
 */
export function observeStamp(
  mine: Stamp,
  remote: Stamp,
  wallMs: number,
): { readonly newest: Stamp; readonly tooFarAhead: boolean } {
  return {
    newest: remote > mine ? remote : mine,
    tooFarAhead: msOf(remote) - wallMs > AHEAD_LIMIT_MS,
  };
}

const stampOf = (ms: number, count: number): Stamp =>
  `${new Date(ms).toISOString()}/${count.toString(16).padStart(4, "0")}`;
