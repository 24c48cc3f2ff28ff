import { timerState } from "@tapside/procedures";
import { Link } from "wouter";
import { nextForHands } from "../visit/go-on.ts";
import type { OpenVisit } from "../visit/use-visit.ts";
import { messages } from "../words/messages.ts";
import { formatClock } from "./format-left.ts";
import { timersOf } from "./running-timers.ts";
import { useNow } from "./use-now.ts";
import { timerWords as words } from "./words.ts";
import "./timers.css";

/** On top of every screen of the visit while something runs: what is next for the hands, and how long the rest takes. */
export function TimerStrip({ open }: { open: OpenVisit }) {
  const timers = timersOf(open.visit);
  return timers.length > 0 ? <Strip open={open} /> : null;
}

function Strip({ open }: { open: OpenVisit }) {
  const now = useNow();
  const timers = timersOf(open.visit).map((one) => ({ ...one, state: timerState(one.timer, now) }));
  const name = (what: string) => messages.visit.waits[what] ?? what;
  const ready = timers.find((one) => one.state.ready);
  const rest = timers
    .filter((one) => one !== ready)
    .map((one) => `${name(one.timer.what)} ${one.state.ready ? words.ready : formatClock(one.state.leftMs)}`)
    .join(" · ");
  return (
    <aside aria-label={words.title}>
      <Link href={`${open.base}/timers`} className={ready ? "timer-strip is-ready" : "timer-strip"}>
        <strong>
          {ready ? words.readyFor(name(ready.timer.what)) : `${words.nextForHands}: ${nextForHands(open)}`}
        </strong>
        <span role="timer" aria-live="off">
          {rest}
        </span>
      </Link>
    </aside>
  );
}
