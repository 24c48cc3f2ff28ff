import { useEffect } from "react";
import { useLocation } from "wouter";
import { todayIso } from "../look/fields/date-field.tsx";
import { pause } from "../store/pause.ts";
import { type LiveBook, useBook } from "../store/use-book.ts";
import { whenIdle } from "../when-idle.ts";
import { dayCounts } from "./day-counts.ts";
import { linesNow, prepareLines } from "./use-unit-lines.ts";

/** After this long without a change, and never in the middle of a visit. */
const REST_MS = 2000;
const TEXTS_A_STRETCH = 25;

/** Keeps what the first screen says, so that it is there at once when the book is opened next. */
export function KeepFirstList() {
  const { live, snapshot } = useBook();
  const [path] = useLocation();
  const resting = !path.startsWith("/visit");
  // biome-ignore lint/correctness/useExhaustiveDependencies: every revision begins the rest anew
  useEffect(() => {
    if (!resting) return;
    let wanted = true;
    let stop = () => {};
    const timer = setTimeout(() => {
      stop = whenIdle(() => void keep(live, () => wanted));
    }, REST_MS);
    return () => {
      wanted = false;
      clearTimeout(timer);
      stop();
    };
  }, [live, snapshot.revision, resting]);
  return null;
}

async function keep(live: LiveBook, wanted: () => boolean): Promise<void> {
  const { book } = live.snapshot();
  await prepareLines(book);
  if (!wanted()) return;
  const lines = linesNow(book);
  for (let i = 0; i < lines.length; i += TEXTS_A_STRETCH) {
    for (const line of lines.slice(i, i + TEXTS_A_STRETCH)) line.text;
    await pause();
    if (!wanted()) return;
  }
  const { today, planned, parts } = dayCounts(book, lines, todayIso());
  await live.keepFirstList({
    day: today,
    planned,
    parts,
    unsent: live.unsent,
    lines: lines.map(({ id, title, fixed, text, facts }) => ({ id, title, fixed, text, facts })),
  });
}
