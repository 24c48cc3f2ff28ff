import type { ExpectedId } from "@tapside/assessment";
import {
  type FieldValue,
  type Instrument,
  type Kept,
  makeReading,
  type Phase,
  SLOTS,
  type SlotId,
} from "@tapside/records";
import { en } from "@tapside/words";
import { useCallback, useState } from "react";
import { Screen } from "../look/screen.tsx";
import { sayWhyNot } from "../words/say-why-not.ts";
import { draftOf, keepDraft } from "./drafts.ts";
import { useGoOn } from "./go-on.ts";
import { instrumentFor, readingU, spreadText } from "./instrument-for.ts";
import { type Key, Keypad } from "./keypad.tsx";
import { Numeral } from "./numeral.tsx";
import { photoOfReading } from "./photo.tsx";
import { Rail } from "./rail.tsx";
import { slotTitle } from "./step-title.ts";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

interface EntryProps {
  readonly open: OpenVisit;
  readonly phase: Phase;
  readonly slot: SlotId;
}

const LONGEST = 7;

/** One number at a time, huge. */
export function Entry({ open, phase, slot }: EntryProps) {
  const { live, visit } = open;
  const { go, hint, steps } = useGoOn(open, `read:${phase}:${slot}`);
  const kept = visit.readings[phase][slot];
  const [raw, setRaw] = useState(() => draftOf(live, visit.id, phase, slot) || kept?.raw || "");
  const instrument = instrumentFor(open, slot);
  const [unit, setUnit] = useState(() => kept?.unit ?? instrument?.unit ?? SLOTS[slot].unit);
  const sign = open.live.snapshot().book.settings.get("settings")?.decimalSign ?? ".";

  const type = useCallback(
    (key: Key) =>
      setRaw((before) => {
        const after =
          key === "rubOut" ? before.slice(0, -1) : before.length >= LONGEST ? before : withKey(before, key);
        keepDraft(live, visit.id, phase, slot, after);
        return after;
      }),
    [live, visit.id, phase, slot],
  );
  const made =
    raw === ""
      ? undefined
      : makeReading({ slot, raw, unit, ...meter(slot, instrument), at: new Date().toISOString() });
  const refusal = made?.kind === "refused" ? sayWhyNot(made) : "";

  const take = useCallback(() => {
    if (made?.kind === "refused") return;
    const field = `reading:${phase}:${slot}`;
    if (made?.kind === "known")
      open.write({ [field]: { ...made.value }, ...drawnBeside(slot), [`skip:${phase}:${slot}`]: null });
    else open.write({ [field]: null, [`skip:${phase}:${slot}`]: true });
    keepDraft(live, visit.id, phase, slot, "");
    go();
  }, [made, open, phase, slot, live, visit.id, go]);

  const takeNotDetected = () => {
    const step = instrument?.resolution ?? 0.1;
    const reading = makeReading({
      slot,
      raw: String(step),
      unit,
      ...meter(slot, instrument),
      at: new Date().toISOString(),
    });
    if (reading.kind !== "known") return;
    open.write({ [`reading:${phase}:${slot}`]: { ...reading.value, notDetected: true } });
    go();
  };
  const takeNotThere = () => {
    const absent = open.file.unit.portsAbsent ?? [];
    void live.write("unit", open.file.unit.id, { portsAbsent: [...absent, SLOTS[slot].port] });
    go();
  };
  const expected = phase === "asFound" || slot !== "airCharge" ? expectedOf(open, slot) : undefined;
  const shown = raw.replace(".", sign);
  return (
    <div className="entry-screen">
      <Screen
        title={slotTitle(slot)}
        aside={phase === "asLeft" ? en.phases.asLeft : undefined}
        subtitle={words.slotHint[slot]}
        ticks={<VisitTicks steps={steps} here={`read:${phase}:${slot}`} />}
        back={
          raw
            ? {
                label: words.undo,
                onPress: () => {
                  setRaw("");
                  keepDraft(live, visit.id, phase, slot, "");
                },
              }
            : { label: words.visit, to: open.base }
        }
        middle={photoOfReading(open, phase, slot)}
        next={
          raw
            ? { label: words.next, hint, onPress: take, quiet: made?.kind === "refused" }
            : { label: words.pass, hint: words.passHint, onPress: take }
        }
      >
        <section className="number-room" aria-live="polite">
          <div className="meter">
            <span>
              {instrument
                ? `${instrument.name} ${spreadText(instrument, made?.kind === "known" ? made.value.value : null)}`
                : ""}
            </span>
            <UnitKey
              slot={slot}
              unit={unit}
              scale={isSolids(slot) ? instrument?.scale : undefined}
              onChange={setUnit}
            />
          </div>
          <div className="huge">
            {shown ? (
              <Numeral text={shown} height={shown.length > 4 ? 98 : 126} name={`${shown} ${unit}`} />
            ) : (
              <SideKeys slot={slot} onNotDetected={takeNotDetected} onNotThere={takeNotThere} />
            )}
          </div>
          <Rail
            expected={expected}
            value={made?.kind === "known" ? made.value.value : null}
            unit={unit}
            spread={made?.kind === "known" ? 2 * readingU(instrument, made.value.value ?? 0) : 0}
          />
          <p className="fixed-words" role="status">
            {refusal}
          </p>
        </section>
        <Keypad onKey={type} onEnter={take} decimalSign={sign} />
      </Screen>
    </div>
  );
}

function SideKeys({
  slot,
  onNotDetected,
  onNotThere,
}: {
  slot: SlotId;
  onNotDetected: () => void;
  onNotThere: () => void;
}) {
  const chlorine = slot === "chlorineBefore" || slot === "chlorineAfter";
  return (
    <div className="side-keys">
      {chlorine ? (
        <button type="button" onClick={onNotDetected}>
          {words.notDetected}
        </button>
      ) : null}
      <button type="button" onClick={onNotThere}>
        {words.notThere}
      </button>
    </div>
  );
}

function UnitKey({
  slot,
  unit,
  scale,
  onChange,
}: {
  slot: SlotId;
  unit: string;
  scale?: string;
  onChange: (unit: string) => void;
}) {
  const { units } = SLOTS[slot];
  const following = units[(units.indexOf(unit) + 1) % units.length] ?? unit;
  const text = scale && unit === "ppm" ? `${unit}, ${scale}` : unit;
  if (units.length < 2) return <strong className="unit-key">{text}</strong>;
  return (
    <button type="button" className="unit-key" onClick={() => onChange(following)}>
      <strong>{text}</strong>
    </button>
  );
}

/** The text after a key: one decimal sign at most, no leading zeros. */
function withKey(before: string, key: Key): string {
  if (key === ".") return before.includes(".") ? before : `${before || "0"}.`;
  return before === "0" ? key : before + key;
}

const isSolids = (slot: SlotId) => SLOTS[slot].quantity === "dissolvedSolids";

const meter = (slot: SlotId, instrument: Kept<Instrument> | undefined) => ({
  ...(instrument && { instrument: instrument.id }),
  ...(instrument?.scale && isSolids(slot) && { scale: instrument.scale }),
});

/** The bucket test draws 8 L unless another volume is written at the unit. */
function drawnBeside(slot: SlotId): Readonly<Record<string, FieldValue>> {
  if (slot !== "tankAfterPressure") return {};
  const reading = makeReading({ slot: "drawnVolume", raw: "8", unit: "L", at: new Date().toISOString() });
  return reading.kind === "known" ? { "reading:asFound:drawnVolume": { ...reading.value } } : {};
}

function expectedOf(open: OpenVisit, slot: SlotId) {
  const { expected } = open.assessment;
  return expected.kind === "known" ? expected.value[slot as ExpectedId] : undefined;
}
