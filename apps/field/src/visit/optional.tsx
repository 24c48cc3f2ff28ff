import type { Reading, SlotId } from "@tapside/records";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords as words } from "./words.ts";

/** What dissolved solids do not show, and where each is read in the feed. */
const UNMEASURED = {
  hardness: "hardness",
  alkalinity: "feedAlkalinity",
  chloride: "feedChloride",
  silica: "feedSilica",
  chlorine: "chlorineBefore",
} as const satisfies Readonly<Record<string, SlotId>>;

/** The reading with its unit; a meter's scale where it is known, else said to be taken for granted. */
function asRead(feed: Reading | undefined, { file }: OpenVisit): string {
  if (!feed) return "";
  const amount = `${feed.raw} ${feed.unit}`;
  if (feed.unit !== "ppm") return amount;
  const scale = feed.scale ?? file.instruments.get(feed.instrument ?? "")?.scale;
  return scale ? words.onScale(amount, scale) : words.onNoScale(amount);
}

/** At 100 ppm or less the owner decides; what was not measured stands beside the question. */
export function Optional({ open }: { open: OpenVisit }) {
  const { go, hint } = useGoOn(open, "optional");
  const feed = open.visit.readings.asFound.feedTds;
  const measured = open.visit.readings.asFound;
  const unmeasured = Object.entries(UNMEASURED).flatMap(([id, slot]) => (measured[slot] ? [] : [id]));
  const given = open.visit.answers.roOptional;
  const [name, setName] = useState(given?.name ?? open.file.site.askName ?? "");
  const [role, setRole] = useState(given?.role ?? open.file.site.askRole ?? "");
  const [problem, setProblem] = useState("");
  const decide = (decision: "keep" | "takeOut" | "undecided") => {
    if (!name.trim()) return setProblem(words.needPerson);
    open.write({ "answer:roOptional": { name: name.trim(), role: role.trim(), decision } });
    go();
  };
  const choices = [
    ["keep", words.ownerKeeps],
    ["takeOut", words.ownerTakesOut],
    ["undecided", words.ownerUndecided],
  ] as const;
  return (
    <Screen
      title={words.titles.optional!}
      back={undoPress(open)}
      middle={photoPress(open, "optional")}
      next={{ label: words.ownerKeeps, hint, onPress: () => decide("keep") }}
    >
      <Band>
        <p>{words.optionalText(asRead(feed, open))}</p>
      </Band>
      <Band tint>
        <strong>{words.notMeasured}</strong>
        <p>{unmeasured.map((id) => messages.quantity(id)).join(", ")}</p>
      </Band>
      <TextEntry label={words.person} value={name} onChange={setName} />
      <TextEntry label={words.role} value={role} onChange={setRole} />
      {choices.map(([id, label]) => (
        <button
          type="button"
          key={id}
          className="choice"
          aria-pressed={given?.decision === id}
          onClick={() => decide(id)}
        >
          {label}
        </button>
      ))}
      <p className="band" role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </Screen>
  );
}
