import { makeReading, type Phase, type SlotId } from "@tapside/records";
import { inSign } from "@tapside/words";
import { useEffect, useState } from "react";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { draftOf, keepDraft } from "./drafts.ts";
import { placeAfter } from "./entry.tsx";
import { DoubtfulKey } from "./entry-keys.tsx";
import { useGoOn } from "./go-on.ts";
import { cupFirst } from "./last-used.ts";
import { Numeral } from "./numeral.tsx";
import { photoOfReading } from "./photo.tsx";
import { slotTitle } from "./step-title.ts";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

interface StopwatchProps {
  readonly open: OpenVisit;
  readonly phase: Phase;
  readonly slot: SlotId;
}

const CUPS_L = [0.5, 1, 0.25, 2];
/** Where nothing flowing is the good answer. */
const SILENT: readonly SlotId[] = ["drainFlowFeedClosed", "drainFlowTankFull"];

/**
 * A timed flow. The running stopwatch is the whole screen; a touch anywhere stops it. The moment it was started is
 * kept, so closing the app does not stop it. Draft text: "start ms" while running, "start stop" once stopped.
 */
export function Stopwatch({ open, phase, slot }: StopwatchProps) {
  const { live, visit } = open;
  const { goAfter, hint, steps } = useGoOn(open, `read:${phase}:${slot}`);
  const go = () => goAfter(placeAfter(slot, open.visit));
  const draft = draftOf(live, visit.id, phase, slot);
  const [startedMs, stoppedMs] = draft.split(" ").map(Number);
  const kept = visit.readings[phase][slot];
  const [cupL, setCupL] = useState(() => kept?.volumeL ?? cupFirst(open, slot));
  const [doubtful, setDoubtful] = useState(kept?.doubtful === true);
  const keep = (text: string) => keepDraft(live, visit.id, phase, slot, text);

  if (startedMs && !stoppedMs) {
    return (
      <Running
        startedMs={startedMs}
        title={slotTitle(slot)}
        cupL={cupL}
        expectedS={expectedSeconds(open, slot, cupL)}
        onStop={() => keep(`${startedMs} ${Date.now()}`)}
        onAgain={() => keep("")}
      />
    );
  }
  const seconds =
    startedMs && stoppedMs ? (stoppedMs - startedMs) / 1000 : kept?.unit === "s" ? kept.value : null;
  const take = () => {
    if (seconds === null) return;
    const reading = makeReading({
      slot,
      raw: seconds.toFixed(1),
      unit: "s",
      volumeL: cupL,
      at: new Date().toISOString(),
      ...(doubtful && { doubtful }),
    });
    if (reading.kind !== "known") return;
    open.write({ [`reading:${phase}:${slot}`]: { ...reading.value, volumeL: cupL } });
    keep("");
    go();
  };
  const takeSilent = () => {
    const reading = makeReading({ slot, raw: "0", unit: "mL/min", at: new Date().toISOString() });
    if (reading.kind !== "known") return;
    open.write({ [`reading:${phase}:${slot}`]: { ...reading.value } });
    go();
  };
  const pass = () => {
    open.write({ [`skip:${phase}:${slot}`]: true });
    go();
  };
  const perMinute = seconds ? (cupL / seconds) * 60 : null;
  return (
    <Screen
      title={slotTitle(slot)}
      aside={phase === "asLeft" ? messages.phases.asLeft : undefined}
      subtitle={words.slotHint[slot]}
      ticks={<VisitTicks steps={steps} here={`read:${phase}:${slot}`} />}
      back={
        seconds === null
          ? { label: words.visit, to: open.base }
          : {
              label: words.again,
              onPress: () => {
                keep("");
                open.write({ [`reading:${phase}:${slot}`]: null });
              },
            }
      }
      middle={photoOfReading(open, phase, slot, { unit: "s" }, go)}
      next={
        seconds === null
          ? { label: words.start, hint: words.startHint, onPress: () => keep(`${Date.now()}`) }
          : { label: words.next, hint, onPress: take }
      }
    >
      <div className="band number-band">
        {seconds === null ? (
          <Expectation open={open} slot={slot} cupL={cupL} />
        ) : (
          <>
            <Numeral text={seconds.toFixed(0)} height={126} name={`${seconds.toFixed(0)} s`} unit="s" />
            <p className="note">{inSign(perMinute?.toFixed(2) ?? "", messages.decimalSign)} L/min</p>
            <Expectation open={open} slot={slot} cupL={cupL} />
          </>
        )}
      </div>
      <fieldset className="cups">
        <legend className="unseen">{words.cup}</legend>
        {CUPS_L.map((size) => (
          <button
            type="button"
            key={size}
            className="choice"
            aria-pressed={cupL === size}
            onClick={() => setCupL(size)}
          >
            {size < 1 ? `${size * 1000} mL` : `${size} L`}
          </button>
        ))}
      </fieldset>
      {seconds === null ? null : (
        <div className="band under-number">
          <p />
          <DoubtfulKey doubtful={doubtful} onTurn={() => setDoubtful(!doubtful)} />
        </div>
      )}
      {seconds === null && SILENT.includes(slot) ? (
        <button type="button" className="choice plain" onClick={takeSilent}>
          {words.noFlow}
        </button>
      ) : null}
      {seconds !== null && startedMs ? (
        <button type="button" className="choice plain" onClick={() => keep(`${startedMs}`)}>
          {words.goOn}
        </button>
      ) : (
        <button type="button" className="choice plain" onClick={pass}>
          {words.pass}
        </button>
      )}
    </Screen>
  );
}

function Expectation({ open, slot, cupL }: { open: OpenVisit; slot: SlotId; cupL: number }) {
  const range = expectedSeconds(open, slot, cupL);
  if (!range) return null;
  const text = secondsText(range);
  return (
    <p className="should">
      <span>{words.shouldBeFull}</span>
      <Numeral text={text} height={48} hollow unit="s" name={`${words.expected} ${text} s`} />
    </p>
  );
}

const secondsText = ({ low, high }: { readonly low: number; readonly high: number }) =>
  `${low.toFixed(0)}–${high.toFixed(0)}`;

/** Seconds a cup should take, from the flow expected today; undefined when that cannot be told. */
function expectedSeconds(open: OpenVisit, slot: SlotId, cupL: number) {
  const { expected } = open.assessment;
  const flow = expected.kind === "known" ? expected.value[slot as "permeateFlow" | "drainFlow"] : undefined;
  if (!flow || flow.low <= 0) return undefined;
  const perMinute = flow.unit === "mL/min" ? 1000 : flow.unit === "L/h" ? 60 : 1;
  const seconds = (value: number) => (cupL / (value / perMinute)) * 60;
  return { low: seconds(flow.high), high: seconds(flow.low) };
}

interface RunningProps {
  readonly startedMs: number;
  readonly title: string;
  readonly cupL: number;
  readonly expectedS: { readonly low: number; readonly high: number } | undefined;
  readonly onStop: () => void;
  readonly onAgain: () => void;
}

/** The whole screen: ink rises towards the expected interval, the seconds stand in it. */
function Running({ startedMs, title, cupL, expectedS, onStop, onAgain }: RunningProps) {
  const nowMs = useNow();
  const seconds = Math.max(0, (nowMs - startedMs) / 1000);
  const first = 1.25 * (expectedS?.high ?? 60);
  const full = first * 2 ** Math.max(0, Math.ceil(Math.log2(seconds / first || 1)));
  const level = (s: number) => `${Math.min(100, (100 * s) / full)}%`;
  return (
    <div className="stopwatch">
      <button
        type="button"
        className="stopwatch-face"
        onClick={onStop}
        aria-label={`${words.cupFull}, ${title}`}
      >
        <span className="ink" style={{ height: level(seconds) }} />
        {expectedS ? (
          <span
            className="interval"
            style={{ bottom: level(expectedS.low), top: `calc(100% - ${level(expectedS.high)})` }}
          />
        ) : null}
        <span className="stopwatch-number" role="timer" aria-live="off">
          <Numeral text={seconds.toFixed(0)} height={seconds >= 100 ? 186 : 284} across />
        </span>
        {expectedS ? (
          <span className="stopwatch-should">
            {words.shouldBeFull}
            <Numeral text={secondsText(expectedS)} height={46} hollow unit="s" across />
          </span>
        ) : null}
        <span className="stopwatch-words">
          <strong>{title}</strong>
          <strong>{cupL < 1 ? `${cupL * 1000} mL` : `${cupL} L`}</strong>
        </span>
        <span className="stopwatch-stop">
          <strong>{words.cupFull}</strong>
          <span>{words.anywhere}</span>
        </span>
      </button>
      <button type="button" className="stopwatch-again" onClick={onAgain}>
        {words.again}
      </button>
    </div>
  );
}

function useNow(): number {
  const [now, setNow] = useState(Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 100);
    return () => clearInterval(timer);
  }, []);
  return now;
}
