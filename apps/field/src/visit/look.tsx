import type { Exception } from "@tapside/records";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { LEAK, wantsLeakPhoto } from "./leak-photo.ts";
import { photoPress } from "./photo.tsx";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

/** One tap says all; a tap on an item says what is not. Each further tap: found, corrected, left, as it should be. */
const ROUND = [undefined, "found", "corrected", "left"] as const;

/** Look and listen: the inspection by exception. */
export function Look({ open }: { open: OpenVisit }) {
  const { go, hint, steps } = useGoOn(open, "look");
  const { exceptions } = open.visit;
  const turn = (item: string) => {
    const at = ROUND.indexOf(exceptions[item]?.state as Exception["state"]);
    const state = ROUND[(at + 1) % ROUND.length];
    open.write({ [`exception:${item}`]: state ? { state } : null });
  };
  const allWell = () => {
    open.write({ "answer:inspection": "asItShouldBe" });
    go();
  };
  const wanted = wantsLeakPhoto(open.visit);
  const given = open.visit.answers.leakPhoto?.reason ?? "";
  const [reason, setReason] = useState(given);
  const keepReason = () => open.write({ "answer:leakPhoto": { reason: reason.trim() } });
  const anyException = Object.keys(exceptions).length > 0;
  return (
    <Screen
      title={words.titles.look!}
      subtitle={words.exceptions}
      ticks={<VisitTicks steps={steps} here="look" />}
      back={undoPress(open)}
      middle={photoPress(open, "asFound")}
      next={
        wanted
          ? { ...photoPress(open, LEAK), label: words.leakPhoto }
          : anyException
            ? { label: words.next, hint, onPress: go }
            : { label: words.asItShouldBe, hint, onPress: allWell }
      }
    >
      {wanted || given ? (
        <>
          <Band tint heavy={!wanted}>
            <strong>{words.leakPhotoWhy}</strong>
          </Band>
          <TextEntry label={words.noLeakPhoto} value={reason} onChange={setReason} />
          {reason.trim() && reason.trim() !== given ? (
            <Band press={{ onPress: keepReason }}>{words.keepReason}</Band>
          ) : null}
        </>
      ) : null}
      <fieldset className="answers">
        <legend>{words.tankAsFound}</legend>
        {(["full", "filling", "unknown"] as const).map((state) => (
          <button
            type="button"
            key={state}
            aria-pressed={open.visit.answers.tankState === state}
            onClick={() => open.write({ "answer:tankState": state })}
          >
            {words.tankStates[state]}
          </button>
        ))}
      </fieldset>
      {Object.entries(messages.inspection).map(([item, label]) => (
        <button
          type="button"
          key={item}
          className="choice"
          aria-pressed={exceptions[item] !== undefined}
          onClick={() => turn(item)}
        >
          <span>
            {label}
            {exceptions[item] ? <span className="note">{words[exceptions[item].state]}</span> : null}
          </span>
        </button>
      ))}
      <Band tint>
        <p className="note">{words.exceptions}</p>
      </Band>
    </Screen>
  );
}
