import { type ProcedureStep, timerState } from "@tapside/procedures";
import { formatClock } from "../timers/format-left.ts";
import { timersOf } from "../timers/running-timers.ts";
import { useNow } from "../timers/use-now.ts";
import { startTimer } from "../timers/write-timer.ts";
import { messages } from "../words/messages.ts";
import { procedureWords as words } from "./procedure-words.ts";
import type { OpenVisit } from "./use-visit.ts";

interface ProcedureWaitProps {
  readonly open: OpenVisit;
  readonly task: string;
  readonly wait: NonNullable<ProcedureStep["wait"]>;
}

/** The waiting that belongs to a step: started by a tap, seen while it runs. The hands can go on meanwhile. */
export function ProcedureWait({ open, task, wait }: ProcedureWaitProps) {
  const now = useNow();
  const name = messages.visit.waits[wait.what] ?? wait.what;
  const running = timersOf(open.visit).find((one) => one.timer.what === wait.what);
  if (!running)
    return (
      <button
        type="button"
        className="choice plain wait"
        onClick={() => startTimer(open.live, open.visit.id, wait.what, wait.minutes, task)}
      >
        {words.startWait(name, wait.minutes)}
      </button>
    );
  const state = timerState(running.timer, now);
  return (
    <p className="wait" role="timer" aria-live="off">
      <strong>{state.ready ? words.ready(name) : words.running(name, formatClock(state.leftMs))}</strong>
    </p>
  );
}
