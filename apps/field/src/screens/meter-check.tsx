import { checkOfDay, METER_STANDARDS, offBy } from "@tapside/book";
import { parseReading } from "@tapside/quantities";
import type { Instrument, Kept } from "@tapside/records";
import { inSign } from "@tapside/words";
import { useId, useState } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { sayWhyNot } from "../words/say-why-not.ts";

/** The morning's check against a known standard: one number, and it covers this instrument's readings of the day. */
export function MeterCheck({ instrument }: { instrument: Kept<Instrument> }) {
  const { live, snapshot } = useBook();
  const id = useId();
  const [raw, setRaw] = useState("");
  const [problem, setProblem] = useState("");
  const standards = METER_STANDARDS.filter((one) => one.unit === instrument.unit);
  const [chosen, setChosen] = useState(0);
  const standard = standards[chosen] ?? standards[0];
  const other = standards.length > 1 ? standards[(chosen + 1) % standards.length] : undefined;
  const today = checkOfDay(snapshot.book, instrument.id, todayIso());
  if (!standard) return null;
  const keep = () => {
    const typed = parseReading(raw);
    if (typed.kind !== "known") return setProblem(sayWhyNot(typed));
    setProblem("");
    setRaw("");
    const check = { instrument: instrument.id, at: new Date().toISOString() };
    void live.writeAll([
      {
        kind: "meterCheck",
        record: live.newId(),
        fields: { ...check, standard: standard.value, read: typed.value.value, unit: standard.unit },
      },
      { kind: "instrument", record: instrument.id, fields: { lastCheckedOn: todayIso() } },
    ]);
  };
  return (
    <>
      <div className="band entry">
        <label htmlFor={id}>{words.checkReads(`${standard.value} ${standard.unit}`)}</label>
        <div className="in-unit">
          <input
            id={id}
            inputMode="decimal"
            autoComplete="off"
            value={raw}
            onChange={(e) => setRaw(e.target.value)}
          />
          {other ? (
            <button type="button" className="unit-switch" onClick={() => setChosen(standards.indexOf(other))}>
              {words.orIn(`${other.value} ${other.unit}`)}
            </button>
          ) : null}
        </div>
        <p role="status">
          {problem ? <span className="problem">{problem}</span> : null}
          {today && !problem
            ? words.checkSaid(
                inSign(offBy(today).toFixed(1), messages.decimalSign),
                `${today.read}`,
                `${today.standard}`,
              )
            : null}
        </p>
      </div>
      <Band press={{ onPress: keep }}>
        <span className="name">{words.keepCheck}</span>
      </Band>
    </>
  );
}
