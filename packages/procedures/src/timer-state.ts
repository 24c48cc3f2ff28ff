import type { Timer } from "@tapside/records";

export interface TimerState {
  readonly elapsedMs: number;
  /** Negative once it is ready. */
  readonly leftMs: number;
  readonly ready: boolean;
  /** The phone's clock was set while it ran. */
  readonly clockJumped: boolean;
}

/** How far a timer is at this wall-clock instant, with the jumps of the clock seen since its start taken off. Never below zero. */
export function timerState(timer: Timer, wallMs: number): TimerState {
  const end = timer.stoppedMs ?? wallMs;
  const elapsedMs = Math.max(0, end - timer.startedMs - (timer.jumpedMs ?? 0));
  const leftMs = timer.durationMs - elapsedMs;
  return { elapsedMs, leftMs, ready: leftMs <= 0, clockJumped: (timer.jumpedMs ?? 0) !== 0 };
}
