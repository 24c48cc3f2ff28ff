import { bypassSoFar } from "@tapside/procedures";
import { makeReading, type Reading, SLOTS } from "@tapside/records";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { messages } from "../words/messages.ts";
import { AmountEntry } from "./amount-entry.tsx";
import { undoPress, useGoOn } from "./go-on.ts";
import { instrumentFor } from "./instrument-for.ts";
import { photoPress } from "./photo.tsx";
import { procedureWords } from "./procedure-words.ts";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords as words } from "./words.ts";

type Decision = "keepBypassed" | "putInUse";

/** The unit is bypassed: who allowed it by what right, until when, under which seal, and the most scale it can have left so far. */
export function Bypass({ open }: { open: OpenVisit }) {
  const { go, hint } = useGoOn(open, "bypass");
  const given = open.visit.answers.bypass;
  const today = todayIso();
  const known = bypassSoFar(open.file, open.visit, today);
  const [name, setName] = useState(given?.name ?? open.file.site.askName ?? "");
  const [role, setRole] = useState(given?.role ?? open.file.site.askRole ?? "");
  const [until, setUntil] = useState(given?.until ?? "");
  const [seal, setSeal] = useState(given?.seal ?? "");
  const [noSeal, setNoSeal] = useState(given?.noSeal === true);
  const [authority, setAuthority] = useState(given?.authority);
  const [byPhone, setByPhone] = useState(given?.byPhone === true);
  const [said, setSaid] = useState(given?.words ?? "");
  const [since, setSince] = useState(given?.since ?? known?.since ?? today);
  const [litresPerDay, setLitresPerDay] = useState(known?.litresPerDay);
  const [hardness, setHardness] = useState<number>();
  const [decision, setDecision] = useState<Decision | undefined>(given?.decision);
  const [problem, setProblem] = useState("");
  const stays = decision === "keepBypassed";
  const answer = {
    name: name.trim(),
    role: role.trim(),
    ...(authority && { authority }),
    ...(byPhone && { byPhone }),
    ...(said.trim() && { words: said.trim() }),
    ...(until && { until }),
    ...(seal.trim() ? { seal: seal.trim() } : noSeal ? { noSeal } : {}),
    ...(isDay(since) && { since }),
    ...(litresPerDay !== undefined && { litresPerDay }),
  };
  const read = hardnessRead(open, hardness);
  const shown = bypassSoFar(
    open.file,
    asTyped(open, { ...answer, decision: decision ?? "keepBypassed" }, read),
    today,
  );
  const keep = () => {
    const lacks = problemOf({ name, decision, stays, until, seal, noSeal, authority });
    if (lacks || !decision) return setProblem(lacks);
    open.write({
      "answer:bypass": { ...answer, decision },
      ...(read && { "reading:asFound:hardness": { ...read } }),
    });
    go();
  };
  return (
    <Screen
      title={words.titles.bypass!}
      subtitle={words.bypassedHint}
      back={undoPress(open)}
      middle={photoPress(open, "bypass")}
      next={{ label: words.next, hint, onPress: keep }}
    >
      <Band tint>
        <p role="status">
          {shown
            ? messages.visit.bypassSoFar(
                shown.since,
                shown.days,
                shown.litresPerDay,
                shown.scaleG.kind === "known" ? shown.scaleG.value : undefined,
              )
            : ""}
        </p>
      </Band>
      <TextEntry label={words.person} value={name} onChange={setName} />
      <TextEntry label={words.role} value={role} onChange={setRole} />
      <button type="button" className="choice" aria-pressed={byPhone} onClick={() => setByPhone(!byPhone)}>
        {procedureWords.byPhone}
      </button>
      <TextEntry label={procedureWords.theirWords} value={said} onChange={setSaid} />
      {(["keepBypassed", "putInUse"] as const).map((id) => (
        <button
          type="button"
          key={id}
          className="choice"
          aria-pressed={decision === id}
          onClick={() => setDecision(id)}
        >
          <span>
            {words[id]}
            {id === "putInUse" ? <span className="note">{procedureWords.putBack}</span> : null}
          </span>
        </button>
      ))}
      {stays ? (
        <>
          <Authority value={authority} onChange={setAuthority} />
          <TextEntry label={words.until} value={until} onChange={setUntil} type="date" />
          <TextEntry label={words.seal} value={seal} onChange={setSeal} />
          <button type="button" className="choice" aria-pressed={noSeal} onClick={() => setNoSeal(!noSeal)}>
            {procedureWords.noSeal}
          </button>
        </>
      ) : null}
      <TextEntry label={procedureWords.bypassSince} value={since} onChange={setSince} type="date" />
      <AmountEntry
        label={procedureWords.litresPerDay}
        unit="L"
        value={litresPerDay}
        decimalSign={decimalSignOf(open.live.snapshot().book.settings.get("settings"))}
        onChange={setLitresPerDay}
      />
      {known?.hardnessMgPerLAsCaCO3 === undefined ? (
        <AmountEntry
          label={procedureWords.hardness}
          unit={hardnessUnit(open)}
          value={hardness}
          decimalSign={decimalSignOf(open.live.snapshot().book.settings.get("settings"))}
          onChange={setHardness}
        />
      ) : null}
      <p className="band" role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </Screen>
  );
}

function Authority({ value, onChange }: { value: string | undefined; onChange: (id: string) => void }) {
  return (
    <fieldset className="set">
      <legend className="band">{procedureWords.authority}</legend>
      {Object.entries(messages.visit.authorities).map(([id, label]) => (
        <button
          type="button"
          key={id}
          className="choice"
          aria-pressed={value === id}
          onClick={() => onChange(id)}
        >
          {label}
        </button>
      ))}
    </fieldset>
  );
}

const isDay = (text: string) => /^\d{4}-\d{2}-\d{2}$/.test(text);

interface Asked {
  readonly name: string;
  readonly decision: Decision | undefined;
  readonly stays: boolean;
  readonly until: string;
  readonly seal: string;
  readonly noSeal: boolean;
  readonly authority: string | undefined;
}

/** What is still lacking, in the order it stands on the screen; empty when nothing is. */
function problemOf({ name, decision, stays, until, seal, noSeal, authority }: Asked): string {
  if (!name.trim()) return words.needPerson;
  if (!decision) return words.choose;
  if (!stays) return "";
  if (!authority) return procedureWords.needAuthority;
  if (!isDay(until)) return words.needUntil;
  return seal.trim() || noSeal ? "" : procedureWords.needSeal;
}

const hardnessUnit = (open: OpenVisit): string =>
  instrumentFor(open, "hardness")?.unit ?? SLOTS.hardness.unit;

function hardnessRead(open: OpenVisit, typed: number | undefined): Reading | undefined {
  if (typed === undefined) return undefined;
  const unit = hardnessUnit(open);
  const made = makeReading({ slot: "hardness", raw: String(typed), unit, at: new Date().toISOString() });
  return made.kind === "known" ? made.value : undefined;
}

/** The visit as it will be once this is kept, so that the bound follows what is typed. */
function asTyped(
  open: OpenVisit,
  bypass: NonNullable<OpenVisit["visit"]["answers"]["bypass"]>,
  hardness: Reading | undefined,
) {
  const { visit } = open;
  const asFound = { ...visit.readings.asFound, ...(hardness && { hardness }) };
  return {
    ...visit,
    readings: { ...visit.readings, asFound },
    answers: { ...visit.answers, inUse: "bypassed" as const, bypass },
  };
}
