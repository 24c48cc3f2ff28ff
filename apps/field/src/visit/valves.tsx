import type { Answers, UnitFile, ValveId } from "@tapside/records";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

type ValveStates = Answers["valvesAsLeft"];

const USUAL: ValveStates = { feed: "open", tank: "open", bypass: "shut", drain: "open", sample: "shut" };

/** A blend valve mixes in on purpose, so it is left open; only a unit that has one is asked about it. */
const usualFor = ({ unit }: UnitFile): ValveStates => (unit.blendValve ? { ...USUAL, blend: "open" } : USUAL);

/** How every valve is left. Most call-backs come from one left shut. */
export function Valves({ open }: { open: OpenVisit }) {
  const { go, hint, steps } = useGoOn(open, "valves");
  const stillBypassed = open.visit.answers.bypass?.decision === "keepBypassed";
  const usual = usualFor(open.file);
  const [states, setStates] = useState<ValveStates>(
    () => open.visit.answers.valvesAsLeft ?? (stillBypassed ? { ...usual, bypass: "open" } : usual),
  );
  const put = (more: Partial<ValveStates>) => {
    const next = { ...states, ...more };
    setStates(next);
    open.write({ "answer:valvesAsLeft": next });
  };
  const turn = (valve: ValveId) => put({ [valve]: states[valve] === "open" ? "shut" : "open" });
  const keep = () => {
    open.write({ "answer:valvesAsLeft": { ...states } });
    go();
  };
  return (
    <Screen
      title={words.titles.valves!}
      ticks={<VisitTicks steps={steps} here="valves" />}
      back={undoPress(open)}
      middle={photoPress(open, "asLeft")}
      next={{ label: words.next, hint, onPress: keep }}
    >
      <Band tint>
        <p>{words.valvesSeen}</p>
      </Band>
      {(Object.keys(words.valve) as ValveId[])
        .filter((valve) => states[valve])
        .map((valve) => (
          <button
            type="button"
            key={valve}
            className="choice valve"
            data-state={states[valve]}
            onClick={() => turn(valve)}
          >
            <span>
              {words.valve[valve]}: <strong>{words[states[valve] ?? "shut"]}</strong>
            </span>
          </button>
        ))}
      <button
        type="button"
        className="choice"
        aria-pressed={states.appliancesFill === "seen"}
        onClick={() => put({ appliancesFill: states.appliancesFill === "seen" ? "notSeen" : "seen" })}
      >
        {words.fillsSeen}
      </button>
      {open.file.point.bypassFitted === false ? null : (
        <TextEntry label={words.sealAsLeft} value={states.seal ?? ""} onChange={(seal) => put({ seal })} />
      )}
    </Screen>
  );
}
