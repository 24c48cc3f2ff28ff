import type { Timer } from "@tapside/records";
import type { LiveBook } from "../store/open-book.ts";
import type { RunningTimer } from "./running-timers.ts";

/** Starts waiting in a visit. */
export function startTimer(live: LiveBook, visit: string, what: string, minutes: number, task?: string) {
  const timer: Timer = {
    what,
    startedMs: Date.now(),
    durationMs: Math.round(minutes * 60_000),
    ...(task && { task }),
  };
  void live.write("visit", visit, { [`timer:${live.newId()}`]: { ...timer } });
}

/** Writes a timer anew: stopped, made longer, or corrected for a clock that was set. */
export const keepTimer = (live: LiveBook, { visit, id, timer }: RunningTimer, undoable = true) =>
  void live.write("visit", visit, { [`timer:${id}`]: { ...timer } }, { undoable });
