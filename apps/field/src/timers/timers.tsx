import { timerState } from "@tapside/procedures";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { undoPress, useGoOn } from "../visit/go-on.ts";
import { Numeral } from "../visit/numeral.tsx";
import { photoPress } from "../visit/photo.tsx";
import type { OpenVisit } from "../visit/use-visit.ts";
import { messages } from "../words/messages.ts";
import { askToTell, type Telling, tellingState } from "./announce.ts";
import { formatClock } from "./format-left.ts";
import { type RunningTimer, timersOf } from "./running-timers.ts";
import { useNow } from "./use-now.ts";
import { timerWords as words } from "./words.ts";
import { keepTimer, startTimer } from "./write-timer.ts";

/** Usual minutes of what is waited for. Common practice, no source; a label's own figure goes before. */
const USUAL_MINUTES: Readonly<Record<string, number>> = {
  tankDraining: 20,
  toWaste: 8,
  carbonRinse: 5,
  contact: 30,
  filling: 120,
};

const MORE_MS = 5 * 60_000;

/** All waiting of the visit side by side: what runs, what is ready, what can be started. */
export function Timers({ open }: { open: OpenVisit }) {
  const { to, hint } = useGoOn(open, "");
  const now = useNow();
  const timers = timersOf(open.visit);
  const running = new Set(timers.map((one) => one.timer.what));
  const { fillingHours } = open.assessment.figures.asFound;
  const minutesOf = (what: string) =>
    what === "filling" && fillingHours.kind === "known"
      ? Math.max(1, Math.round(fillingHours.value.value * 60))
      : USUAL_MINUTES[what]!;
  return (
    <Screen
      title={words.title}
      subtitle={`${words.nextForHands}: ${hint}`}
      back={undoPress(open)}
      middle={photoPress(open, "waiting")}
      next={{ label: hint, hint: words.nextForHands, to }}
    >
      {timers.map((one) => (
        <TimerBand key={one.id} one={one} open={open} now={now} />
      ))}
      {timers.length === 0 ? <Band>{words.none}</Band> : null}
      {Object.keys(USUAL_MINUTES)
        .filter((what) => !running.has(what))
        .map((what) => (
          <button
            type="button"
            key={what}
            className="choice plain"
            onClick={() => startTimer(open.live, open.visit.id, what, minutesOf(what))}
          >
            <span>
              {words.start(messages.visit.waits[what] ?? what, minutesOf(what))}
              <span className="note">{words.startHint}</span>
            </span>
          </button>
        ))}
      <TellMe />
    </Screen>
  );
}

function TimerBand({ one, open, now }: { one: RunningTimer; open: OpenVisit; now: number }) {
  const { timer } = one;
  const state = timerState(timer, now);
  const name = messages.visit.waits[timer.what] ?? timer.what;
  const text = formatClock(Math.abs(state.leftMs));
  return (
    <section className={state.ready ? "timer is-ready" : "timer"} data-timer={timer.what}>
      <p className="row">
        <strong className="name">{name}</strong>
        <span>{state.ready ? words.readySince : words.of(Math.round(timer.durationMs / 60_000))}</span>
      </p>
      <p className="timer-left">
        <Numeral
          text={text}
          height={58}
          hollow={!state.ready}
          onInk={state.ready}
          name={`${name} ${state.ready ? words.over(text) : text}`}
        />
      </p>
      {state.clockJumped ? <p>{words.clockJumped(jumpText(timer.jumpedMs ?? 0))}</p> : null}
      <div className="answers">
        <button
          type="button"
          onClick={() => keepTimer(open.live, { ...one, timer: { ...timer, stoppedMs: Date.now() } })}
        >
          {words.stop}
        </button>
        <button
          type="button"
          onClick={() =>
            keepTimer(open.live, { ...one, timer: { ...timer, durationMs: timer.durationMs + MORE_MS } })
          }
        >
          {words.longer}
        </button>
      </div>
    </section>
  );
}

const jumpText = (ms: number): string =>
  ms > 0 ? words.forward(formatClock(ms)) : words.back(formatClock(-ms));

/** The permission is asked at a tap, never by itself; everything works without. */
function TellMe() {
  const [state, setState] = useState<Telling>(tellingState);
  if (state !== "canAsk") return <Band tint>{state === "allowed" ? words.willTell : words.willNotTell}</Band>;
  return (
    <button type="button" className="choice plain" onClick={() => void askToTell().then(setState)}>
      <span>
        {words.tellMe}
        <span className="note">{words.tellMeHint}</span>
      </span>
    </button>
  );
}
