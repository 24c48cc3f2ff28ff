import { type ClockSight, clockAcrossRestart, clockNotice, timerState } from "@tapside/procedures";
import { useEffect } from "react";
import type { LiveBook } from "../store/open-book.ts";
import { useBook } from "../store/use-book.ts";
import { messages } from "../words/messages.ts";
import { announce } from "./announce.ts";
import { runningTimers } from "./running-timers.ts";
import { timerWords as words } from "./words.ts";
import { keepTimer } from "./write-timer.ts";

const LAST_SEEN = "tapside-clock-last-seen";

/** Watches the clock and the timers while any runs, on whatever screen. Draws nothing. One tab does it for all. */
export function TimerWatch() {
  const { live, snapshot } = useBook();
  const running = runningTimers(snapshot.book).length > 0;
  useEffect(() => (running ? inOneTab((signal) => watch(live, signal)) : undefined), [live, running]);
  return null;
}

/** Runs a job in the only tab that holds the lock; returns the way out. */
function inOneTab(job: (signal: AbortSignal) => void): () => void {
  const ending = new AbortController();
  const { signal } = ending;
  const until = () => new Promise<void>((done) => signal.addEventListener("abort", () => done()));
  const locks = typeof navigator === "undefined" ? undefined : navigator.locks;
  if (!locks) job(signal);
  else
    void locks
      .request("timer-watch", { signal }, () => {
        job(signal);
        return until();
      })
      .catch(() => undefined);
  return () => ending.abort();
}

const sightNow = (): ClockSight => ({ wallMs: Date.now(), steadyMs: performance.now() });

function watch(live: LiveBook, signal: AbortSignal) {
  const told = new Set<string>();
  let watched = document.visibilityState === "visible";
  let last = sightNow();
  takeOff(live, clockAcrossRestart(lastSeen(), last.wallMs));
  keepSeen(last.wallMs);
  const look = () => {
    const now = sightNow();
    takeOff(live, clockNotice(last, now, watched));
    watched = document.visibilityState === "visible";
    last = now;
    keepSeen(now.wallMs);
    tellReady(live, told);
  };
  const hide = () => {
    if (document.visibilityState !== "visible") watched = false;
    else look();
  };
  const timer = setInterval(look, 1000);
  document.addEventListener("visibilitychange", hide);
  signal.addEventListener("abort", () => {
    clearInterval(timer);
    document.removeEventListener("visibilitychange", hide);
  });
}

/** A jump of the clock is taken off every timer that was running when it happened. */
function takeOff(live: LiveBook, notice: ReturnType<typeof clockNotice>) {
  if (notice.kind !== "jumped") return;
  for (const one of runningTimers(live.snapshot().book))
    keepTimer(
      live,
      { ...one, timer: { ...one.timer, jumpedMs: (one.timer.jumpedMs ?? 0) + Math.round(notice.byMs) } },
      false,
    );
}

function tellReady(live: LiveBook, told: Set<string>) {
  for (const { id, timer } of runningTimers(live.snapshot().book)) {
    const key = `${id}:${timer.durationMs}`;
    if (told.has(key) || !timerState(timer, Date.now()).ready) continue;
    told.add(key);
    announce(words.readyFor(messages.visit.waits[timer.what] ?? timer.what), id);
  }
}

const lastSeen = (): number => {
  try {
    return Number(localStorage.getItem(LAST_SEEN) ?? 0);
  } catch {
    return 0;
  }
};

function keepSeen(wallMs: number) {
  try {
    localStorage.setItem(LAST_SEEN, String(wallMs));
  } catch {
    // Only the check across a restart is lost.
  }
}
