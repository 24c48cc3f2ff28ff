import {
  answersOf,
  doubtOf,
  noteAnswers,
  noteOf,
  phaseNow,
  SIGNS,
  type SignId,
  slotToRead,
  TEST_IDS,
  TESTS,
  type Test,
} from "@tapside/diagnosis";
import { useState } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Rows, Screen } from "../look/screen.tsx";
import { undoPress } from "../visit/go-on.ts";
import type { OpenVisit } from "../visit/use-visit.ts";
import { leaveWayBack } from "../visit/way-back.ts";
import { asAnswers } from "./as-answers.ts";
import { NoteEntry } from "./note-entry.tsx";
import { causeWords as words } from "./words.ts";

/** One test of the search: where, what to prepare, and a place for each of its signs; the next key reads the first that was not. */
export default function CauseTest({ open, test }: { open: OpenVisit; test: string }) {
  const id = TEST_IDS.find((one) => one === test);
  const [typing, setTyping] = useState<SignId>();
  const enter = useEnter(open, setTyping);
  const back = `${open.base}/cause`;
  if (!id) return <p className="band">{words.notThere}</p>;
  if (typing) return <NoteEntry open={open} sign={typing} onDone={() => setTyping(undefined)} />;
  const { signs, setUp, minutes }: Test = TESTS[id];
  const unread = signs.find((sign) => isUnread(open, sign));
  const keys = unread
    ? {
        middle: { label: words.causesKey, to: back, picture: <Rows /> },
        next: {
          label: words.readIt,
          hint: words.enterSign(words.signs[unread]),
          onPress: () => enter(unread),
        },
      }
    : { next: { label: words.title, to: back } };
  return (
    <Screen
      title={words.tests[id]}
      subtitle={words.at(words.minutes(minutes), words.ports[id])}
      back={undoPress(open)}
      {...keys}
    >
      {setUp ? (
        <Band tint>
          <strong>{words.before(words.setUps[setUp])}</strong>
          <p>{words.careful}</p>
        </Band>
      ) : null}
      {signs.map((sign) => (
        <SignPlace key={sign} open={open} sign={sign} onEnter={() => enter(sign)} />
      ))}
    </Screen>
  );
}

/** Leads to where a sign is entered: its own reading of the visit, or a number only this search asks for. */
function useEnter(open: OpenVisit, type: (sign: SignId) => void) {
  const [, navigate] = useLocation();
  return (sign: SignId) => {
    const slot = slotToRead(sign);
    if (!slot) return type(sign);
    const phase = phaseNow(open);
    leaveWayBack(open.base, `read:${phase}:${slot}`, "cause");
    navigate(`${open.base}/read/${phase}/${slot}`);
  };
}

/** A number that was not entered in this phase; a look has its keys on the page. */
function isUnread(open: OpenVisit, sign: SignId): boolean {
  if (SIGNS[sign].kind === "look") return false;
  const slot = slotToRead(sign);
  const phase = phaseNow(open);
  const kept = slot ? open.visit.readings[phase][slot] : undefined;
  return !kept && typeof answersOf(open)[noteOf(sign, phase)] !== "number";
}

function SignPlace({ open, sign, onEnter }: { open: OpenVisit; sign: SignId; onEnter: () => void }) {
  const slot = slotToRead(sign);
  const phase = phaseNow(open);
  const noted = answersOf(open)[noteOf(sign, phase)];
  if (SIGNS[sign].kind === "look") return <LookKeys open={open} sign={sign} noted={noted} />;
  const kept = slot ? open.visit.readings[phase][slot] : undefined;
  const doubt = doubtOf(sign, phase);
  const isDoubtful = kept ? kept.doubtful === true : answersOf(open)[doubt] === true;
  const read = kept
    ? `${kept.raw} ${kept.unit}`
    : typeof noted === "number"
      ? words.signText(sign, noted)
      : "";
  const text = read && isDoubtful ? words.notUsed(read) : read;
  return (
    <>
      <Band press={{ onPress: onEnter }}>
        <span className="name">{words.enterSign(words.signs[sign])}</span>
        <p className="note">{text || words.again}</p>
      </Band>
      {slot || typeof noted !== "number" ? null : (
        <fieldset className="answers">
          <legend>{words.trust}</legend>
          {([false, true] as const).map((value) => (
            <button
              type="button"
              key={String(value)}
              aria-pressed={isDoubtful === value}
              onClick={() => open.write({ [`answer:${doubt}`]: value || null })}
            >
              {value ? words.doubtful : words.trusted}
            </button>
          ))}
        </fieldset>
      )}
    </>
  );
}

/** A look is seen, not seen, or was not looked for. */
function LookKeys({ open, sign, noted }: { open: OpenVisit; sign: SignId; noted: unknown }) {
  const choices = [
    [1, words.seen],
    [0, words.notSeen],
    [null, words.notLooked],
  ] as const;
  return (
    <fieldset className="answers big">
      <legend>{words.signs[sign]}</legend>
      {choices.map(([value, label]) => (
        <button
          type="button"
          key={label}
          aria-pressed={value === null ? typeof noted !== "number" : noted === value}
          onClick={() =>
            open.write(asAnswers(noteAnswers(sign, phaseNow(open), value, new Date().toISOString())))
          }
        >
          {label}
        </button>
      ))}
    </fieldset>
  );
}
