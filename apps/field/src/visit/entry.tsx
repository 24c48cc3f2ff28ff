import type { ExpectedId } from "@tapside/assessment";
import {
  type FieldValue,
  FURTHER_SLOTS,
  type Instrument,
  type Kept,
  type KeptVisit,
  makeReading,
  type Phase,
  SLOTS,
  type SlotId,
} from "@tapside/records";
import { useCallback, useState } from "react";
import { Screen } from "../look/screen.tsx";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { messages } from "../words/messages.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { draftOf, keepDraft } from "./drafts.ts";
import { DoubtfulKey, SideKeys, UnitKey } from "./entry-keys.tsx";
import { useGoOn } from "./go-on.ts";
import { instrumentFor, readingU, spreadText } from "./instrument-for.ts";
import { type Key, Keypad } from "./keypad.tsx";
import { drawnReading, drawnText, unitFirst } from "./last-used.ts";
import { Numeral } from "./numeral.tsx";
import { photoOfReading } from "./photo.tsx";
import { PhotoView } from "./photo-view.tsx";
import { asksFor } from "./plans.ts";
import { Rail } from "./rail.tsx";
import { slotTitle } from "./step-title.ts";
import { useNeighboursAsk } from "./use-neighbours-ask.ts";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { withKey } from "./with-key.ts";
import { visitWords as words } from "./words.ts";

interface EntryProps {
  readonly open: OpenVisit;
  readonly phase: Phase;
  readonly slot: SlotId;
}

/** One number at a time, huge. */
export function Entry({ open, phase, slot }: EntryProps) {
  const { live, visit } = open;
  const { goAfter, hint, steps } = useGoOn(open, `read:${phase}:${slot}`);
  const go = () => goAfter(placeAfter(slot, open.visit));
  const kept = visit.readings[phase][slot];
  const [raw, setRaw] = useState(() => draftOf(live, visit.id, phase, slot) || kept?.raw || "");
  const instrument = instrumentFor(open, slot);
  const [unit, setUnit] = useState(() => kept?.unit ?? unitFirst(open, slot, instrument));
  const [doubtful, setDoubtful] = useState(kept?.doubtful === true);
  const sign = decimalSignOf(live.snapshot().book.settings.get("settings"));
  const photo = kept?.photo;

  const setTyped = useCallback(
    (text: string) => {
      setRaw(text);
      keepDraft(live, visit.id, phase, slot, text);
    },
    [live, visit.id, phase, slot],
  );
  const type = useCallback((key: Key) => setTyped(withKey(raw, key)), [raw, setTyped]);
  const typed = {
    slot,
    unit,
    ...meter(slot, instrument),
    at: photo ? kept.at : new Date().toISOString(),
    ...(photo && { photo }),
    ...(doubtful && { doubtful }),
  };
  const made = raw === "" ? undefined : makeReading({ ...typed, raw });
  const refusal = made?.kind === "refused" ? sayWhyNot(made) : "";
  const value = made?.kind === "known" ? made.value.value : null;

  const asked = useNeighboursAsk(open, phase, slot, made?.kind === "known" ? made.value : undefined);

  const take = () => {
    if (made?.kind === "refused") return;
    if (made?.kind === "known")
      open.write({
        [`reading:${phase}:${slot}`]: { ...made.value },
        ...drawnBeside(open, slot),
        [`skip:${phase}:${slot}`]: null,
      });
    else if (!photo) open.write({ [`reading:${phase}:${slot}`]: null, [`skip:${phase}:${slot}`]: true });
    keepDraft(live, visit.id, phase, slot, "");
    go();
  };

  const takeNotDetected = () => {
    const reading = makeReading({ ...typed, raw: String(instrument?.resolution ?? 0.1) });
    if (reading.kind !== "known") return;
    open.write({ [`reading:${phase}:${slot}`]: { ...reading.value, notDetected: true } });
    go();
  };
  const takeNotThere = () => {
    const absent = open.file.unit.portsAbsent ?? [];
    void live.write("unit", open.file.unit.id, { portsAbsent: [...absent, SLOTS[slot].port] });
    go();
  };
  const shown = raw.replace(".", sign);
  return (
    <div className="entry-screen">
      <Screen
        title={slotTitle(slot)}
        {...(phase === "asLeft" && { aside: messages.phases.asLeft })}
        subtitle={slot === "tankAfterPressure" ? words.drawn(drawnText(open)) : (words.slotHint[slot] ?? "")}
        ticks={<VisitTicks steps={steps} here={`read:${phase}:${slot}`} />}
        back={
          raw ? { label: words.undo, onPress: () => setTyped("") } : { label: words.visit, to: open.base }
        }
        middle={photoOfReading(open, phase, slot, { unit, ...meter(slot, instrument) }, go)}
        next={
          raw
            ? { label: words.next, hint, onPress: take, quiet: made?.kind === "refused" }
            : { label: photo ? words.later : words.pass, hint: words.passHint, onPress: take }
        }
      >
        <section className="number-room" aria-live="polite">
          <div className="meter">
            <span>{instrument ? `${instrument.name} ${spreadText(instrument, value)}` : ""}</span>
            <UnitKey
              slot={slot}
              unit={unit}
              scale={isSolids(slot) ? instrument?.scale : undefined}
              onChange={setUnit}
            />
          </div>
          {photo ? <PhotoView open={open} hash={photo} alt={words.photoOf(slotTitle(slot))} /> : null}
          <div className={photo ? "huge beside-photo" : "huge"}>
            {shown ? (
              <Numeral
                text={shown}
                height={photo ? 62 : shown.length > 4 ? 98 : 126}
                name={`${shown} ${unit}`}
              />
            ) : photo ? (
              <p className="note">{words.typeFromPhoto}</p>
            ) : (
              <SideKeys
                slot={slot}
                onNotDetected={takeNotDetected}
                onNotThere={takeNotThere}
                {...(slot === "tankAfterPressure" && {
                  drawn: { text: drawnText(open), to: `${open.base}/read/asFound/drawnVolume` },
                })}
              />
            )}
          </div>
          {photo ? null : (
            <Rail
              expected={expectedOf(open, phase, slot)}
              value={value}
              unit={unit}
              spread={value === null ? 0 : 2 * readingU(instrument, value)}
            />
          )}
          <div className="under-number">
            <p role="status">{refusal || asked}</p>
            <DoubtfulKey doubtful={doubtful} onTurn={() => setDoubtful(!doubtful)} />
          </div>
        </section>
        <Keypad onKey={type} onEnter={take} decimalSign={sign} />
      </Screen>
    </div>
  );
}

/** Where a number taken up on the side leads back to; undefined follows the order of hands. */
export const placeAfter = (slot: SlotId, visit: KeptVisit): string | undefined =>
  slot === "drawnVolume"
    ? "read/asFound/tankAfterPressure"
    : (FURTHER_SLOTS as readonly SlotId[]).includes(slot) && !asksFor(visit, slot)
      ? "also"
      : undefined;

const isSolids = (slot: SlotId) => SLOTS[slot].quantity === "dissolvedSolids";

const meter = (slot: SlotId, instrument: Kept<Instrument> | undefined) => ({
  ...(instrument && { instrument: instrument.id }),
  ...(instrument?.scale && isSolids(slot) && { scale: instrument.scale }),
});

/** The litres drawn are kept beside the gauge after them, as a reading of their own. */
function drawnBeside(open: OpenVisit, slot: SlotId): Readonly<Record<string, FieldValue>> {
  if (slot !== "tankAfterPressure" || open.visit.readings.asFound.drawnVolume) return {};
  const reading = makeReading({ slot: "drawnVolume", ...drawnReading(open), at: new Date().toISOString() });
  return reading.kind === "known" ? { "reading:asFound:drawnVolume": { ...reading.value } } : {};
}

function expectedOf(open: OpenVisit, phase: Phase, slot: SlotId) {
  const { expected } = open.assessment;
  if (phase === "asLeft" && slot === "airCharge") return undefined;
  return expected.kind === "known" ? expected.value[slot as ExpectedId] : undefined;
}
