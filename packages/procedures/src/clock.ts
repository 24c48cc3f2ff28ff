/** What two clocks of one device showed at one moment: the wall clock, which people and networks set, and the one that only goes on. */
export interface ClockSight {
  readonly wallMs: number;
  /** Counts from the app's start; stands still while some phones sleep. */
  readonly steadyMs: number;
}

export type ClockNotice =
  | { readonly kind: "steady" }
  /** The wall clock was set: by this much, forwards positive. */
  | { readonly kind: "jumped"; readonly byMs: number }
  /** Forwards, while nobody looked: sleep or a clock set forward, which cannot be told apart. */
  | { readonly kind: "unseen"; readonly forMs: number };

const SLACK_MS = 2000;

/**
 * Whether the wall clock was set between two looks. `watched` is true when the app was on the screen all the time between them: then a
 * wall clock that ran ahead of the steady one was set. Unwatched, it may just be that the phone slept; only a step back is certain.
 *
 * Range: one run of the app, since the steady clock starts anew with it.
 * Error: steps of up to 2 s pass unnoticed.
 */
export function clockNotice(before: ClockSight, now: ClockSight, watched: boolean): ClockNotice {
  const byMs = now.wallMs - before.wallMs - (now.steadyMs - before.steadyMs);
  if (Math.abs(byMs) <= SLACK_MS) return { kind: "steady" };
  if (byMs < 0 || watched) return { kind: "jumped", byMs };
  return { kind: "unseen", forMs: byMs };
}

/**
 * The same across a restart of the app, when only the wall clock is left: earlier than when it was last seen means it went back, by at least
 * the difference. Later tells nothing.
 */
export function clockAcrossRestart(lastSeenWallMs: number, wallMs: number): ClockNotice {
  const byMs = wallMs - lastSeenWallMs;
  return byMs < -SLACK_MS ? { kind: "jumped", byMs } : { kind: "steady" };
}
