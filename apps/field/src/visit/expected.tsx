import { type Assessment, boosterOf, type ExpectedId, expectedToday, mixUnknown } from "@tapside/assessment";
import {
  absentPorts,
  type KeptVisit,
  makeReading,
  type Reading,
  SLOTS,
  type SlotId,
  type UnitFile,
  unitFile,
} from "@tapside/records";
import { inSign } from "@tapside/words";
import { memo, useEffect, useMemo, useState } from "react";
import { Link } from "wouter";
import { type Press, Screen } from "../look/screen.tsx";
import { Gone } from "../screens/gone.tsx";
import { useBook } from "../store/use-book.ts";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { messages } from "../words/messages.ts";
import { contextNow } from "./context-now.ts";
import { draftOf, keepDraft } from "./drafts.ts";
import { useGoOn } from "./go-on.ts";
import { type Key, Keypad } from "./keypad.tsx";
import { unitUsual } from "./last-used.ts";
import { Numeral } from "./numeral.tsx";
import { photoPress } from "./photo.tsx";
import { PortBand } from "./port-band.tsx";
import { slotTitle } from "./step-title.ts";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { WaterBeside } from "./water-beside.tsx";
import { withKey } from "./with-key.ts";
import { visitWords as words } from "./words.ts";

/** A pause in typing of this long, shorter than a thumb's way to the next key, is used to have the answer ready before it is asked for. */
const PAUSE_MS = 120;

type TwoNumbers = "beforeFilterPressure" | "feedTemperature";
const TWO: readonly TwoNumbers[] = ["beforeFilterPressure", "feedTemperature"];

const PORTS: readonly ExpectedId[] = [
  "afterFilterPressure",
  "drainFlow",
  "permeateFlow",
  "permeateTds",
  "tankFullPressure",
  "deliveredTds",
];

/** "What should it read today?" within a visit: its own two readings in, every port out. */
export function ExpectedOfVisit({ open }: { open: OpenVisit }) {
  const { steps, hint, to, next } = useGoOn(open, "");
  const readings = open.visit.readings.asFound;
  const wanted = TWO.find((slot) => readings[slot]?.value == null);
  const place = (slot: SlotId) => `${open.base}/read/asFound/${slot}`;
  return (
    <Screen
      title={words.expectedTitle}
      ticks={<VisitTicks steps={steps} here="" />}
      back={{ label: words.visit, to: open.base }}
      middle={photoPress(open, "asFound")}
      next={
        wanted
          ? { label: slotTitle(wanted), hint: words.slotHint[wanted] ?? "", to: place(wanted) }
          : { label: hint, hint: (next.reading && words.slotHint[next.reading.slot]) ?? "", to }
      }
    >
      <Answers file={open.file} visit={open.visit} expected={open.assessment.expected}>
        {TWO.map((slot) => (
          <Link key={slot} href={place(slot)} className="given">
            <Given slot={slot} reading={readings[slot]} />
          </Link>
        ))}
      </Answers>
    </Screen>
  );
}

/** The same before any visit: two numbers typed here, kept as typed, nothing else touched. */
export function ExpectedOfUnit({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const { book } = snapshot;
  const file = useMemo(() => unitFile(book, id), [book, id]);
  const record = `expected:${id}`;
  const [raws, setRaws] = useState<Readonly<Record<TwoNumbers, string>>>(() => ({
    beforeFilterPressure: draftOf(live, record, "asFound", "beforeFilterPressure"),
    feedTemperature: draftOf(live, record, "asFound", "feedTemperature"),
  }));
  const [typing, setTyping] = useState<TwoNumbers | undefined>(TWO.find((slot) => raws[slot] === ""));
  const units = useMemo(
    () => Object.fromEntries(TWO.map((slot) => [slot, unitUsual(book, slot)])) as Record<TwoNumbers, string>,
    [book],
  );
  const visit = useMemo(() => imagined(id, raws, units), [id, raws, units]);
  // Worked out in a pause or when asked for, never between two keys: the keys answer at once.
  const ahead = useAfterPause(visit);
  const asked = typing ? ahead : visit;
  const expected = useMemo(
    () => file && expectedToday({ ...file, visits: [...file.visits, asked] }, asked, contextNow(book)),
    [file, asked, book],
  );
  if (!file || !expected) return <Gone />;
  const sign = decimalSignOf(book.settings.get("settings"));
  const onKey = (key: Key) => {
    if (!typing) return;
    const raw = withKey(raws[typing], key);
    setRaws({ ...raws, [typing]: raw });
    keepDraft(live, record, "asFound", typing, raw);
  };
  const after = TWO.find((slot) => slot !== typing && raws[slot] === "");
  const backToUnit = { label: words.back, to: `/unit/${id}` };
  const next: Press = typing
    ? { label: words.next, hint: after ? slotTitle(after) : words.everyPort, onPress: () => setTyping(after) }
    : { label: words.toUnit, to: `/unit/${id}` };
  return (
    <div className={typing ? "entry-screen typing" : undefined}>
      <Screen title={words.expectedTitle} back={backToUnit} next={next}>
        <Answers file={file} visit={asked} expected={expected} typing={typing !== undefined}>
          {TWO.map((slot) => (
            <button
              type="button"
              key={slot}
              className="given"
              aria-pressed={typing === slot}
              onClick={() => setTyping(slot)}
            >
              <Given
                slot={slot}
                reading={visit.readings.asFound[slot]}
                typed={raws[slot]}
                unit={units[slot]}
              />
            </button>
          ))}
        </Answers>
        {typing ? <Keypad onKey={onKey} onEnter={() => setTyping(after)} decimalSign={sign} /> : null}
      </Screen>
    </div>
  );
}

/** The newest value that has stood for a pause. */
function useAfterPause<T>(value: T): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return settled;
}

/** A visit nobody made: the two numbers as if they had just been read. */
function imagined(
  unit: string,
  raws: Readonly<Record<TwoNumbers, string>>,
  units: Readonly<Record<TwoNumbers, string>>,
): KeptVisit {
  const at = new Date().toISOString();
  const asFound = Object.fromEntries(
    TWO.flatMap((slot) => {
      const reading = makeReading({ slot, raw: raws[slot], unit: units[slot], at });
      return reading.kind === "known" ? [[slot, reading.value]] : [];
    }),
  );
  return {
    id: `expected:${unit}`,
    unit,
    startedAt: at,
    readings: { asFound, asLeft: {} },
    answers: {},
    exceptions: {},
    work: {},
    photos: {},
    skipped: [],
  };
}

interface GivenProps {
  readonly slot: TwoNumbers;
  readonly reading: Reading | undefined;
  readonly typed?: string;
  readonly unit?: string;
}

function Given({ slot, reading, typed, unit }: GivenProps) {
  const text = inSign(reading?.raw || typed || "", messages.decimalSign);
  return (
    <>
      <span>{slotTitle(slot)}</span>
      {text ? (
        <Numeral text={text} height={46} unit={reading?.unit ?? unit ?? SLOTS[slot].unit} />
      ) : (
        <span className="note">{words.notYet}</span>
      )}
    </>
  );
}

interface AnswersProps {
  readonly file: UnitFile;
  readonly visit: KeptVisit;
  readonly expected: Assessment["expected"];
  /** The two numbers are still being typed: the answers wait, out of sight. */
  readonly typing?: boolean;
  readonly children: React.ReactNode;
}

/** The two numbers on top, hollow beneath them what every port should read. */
function Answers({ file, visit, expected, typing = false, children }: AnswersProps) {
  return (
    <>
      <div className="along-water">
        <WaterBeside file={file} visit={visit} expected={expected} typing={typing} />
        <div className="band water heavy two" data-part="tap" data-mark="read">
          {children}
        </div>
        <div hidden={typing}>
          <Ports file={file} expected={expected} />
        </div>
      </div>
      {!typing && expected.kind === "known" ? <p className="band tint">{words.soundUnit}</p> : null}
    </>
  );
}

/** Every port, drawn anew only for another answer. */
const Ports = memo(({ file, expected }: Pick<AnswersProps, "file" | "expected">) => {
  const absent = new Set(absentPorts(file.unit));
  return PORTS.map((id) => (
    <PortBand
      key={id}
      id={id}
      expected={expected.kind === "known" ? expected.value[id] : undefined}
      absent={absent.has(SLOTS[id].port)}
      boosted={boosterOf(file.unit) !== undefined}
      whyNot={whyNot(id, file, expected)}
    />
  ));
});

function whyNot(id: ExpectedId, file: UnitFile, expected: Assessment["expected"]): string {
  if (expected.kind === "missing") return messages.missing(expected);
  if (expected.kind === "refused") return messages.refusal(expected);
  if (id === "deliveredTds" && mixUnknown(file)) return words.blended;
  if (!(file.unit.tankL! > 0)) return messages.missing({ kind: "missing", missing: ["unit.tankL"] });
  return words.tankCannotFill;
}
