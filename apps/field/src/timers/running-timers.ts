import type { Book, KeptVisit, Timer } from "@tapside/records";

export interface RunningTimer {
  readonly visit: string;
  readonly id: string;
  readonly timer: Timer;
}

/** Timers of one visit that nobody has stopped, oldest first. */
export const timersOf = (visit: KeptVisit): readonly RunningTimer[] =>
  Object.entries(visit.timers ?? {})
    .filter(([, timer]) => timer.stoppedMs === undefined)
    .map(([id, timer]) => ({ visit: visit.id, id, timer }))
    .sort((a, b) => a.timer.startedMs - b.timer.startedMs || (a.id < b.id ? -1 : 1));

/** Every timer that runs in the book. */
export const runningTimers = (book: Book): readonly RunningTimer[] =>
  [...book.visit.values()].flatMap(timersOf);
