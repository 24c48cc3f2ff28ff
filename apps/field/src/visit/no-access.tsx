import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { kindWords as words } from "./kind-words.ts";
import { photoPress } from "./photo.tsx";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords } from "./words.ts";

/** Nobody let in, or broken off half-way: one tap keeps reason and time and opens the camera. */
export function NoAccess({ open }: { open: OpenVisit }) {
  const { go } = useGoOn(open, "noAccess");
  const given = open.visit.answers.noAccess;
  const [note, setNote] = useState(given?.note ?? "");
  const camera = photoPress(open, "noAccess");
  const write = (reason: string, at: string) =>
    open.write({ "answer:noAccess": { reason, at, ...(note.trim() && { note: note.trim() }) } });
  const answer = (reason: string) => {
    write(reason, new Date().toISOString());
    camera.onPress?.();
  };
  const goOn = () => {
    if (!given) return;
    if (note.trim() !== (given.note ?? "")) write(given.reason, given.at);
    go();
  };
  return (
    <Screen
      title={open.visit.kind === "noAccess" ? words.noAccessTitle : words.aborted}
      subtitle={given ? words.keptAt(timeOf(given.at)) : words.noAccessHint}
      back={undoPress(open)}
      middle={camera}
      next={{
        label: visitWords.next,
        hint: given ? visitWords.titles.record! : visitWords.choose,
        quiet: !given,
        onPress: goOn,
      }}
    >
      {Object.entries(messages.visit.reasons).map(([id, label]) => (
        <button
          type="button"
          key={id}
          className="choice"
          aria-pressed={given?.reason === id}
          onClick={() => answer(id)}
        >
          {label}
        </button>
      ))}
      <TextEntry label={words.more} value={note} onChange={setNote} />
      {Object.values(open.visit.photos).some((photo) => photo.for === "noAccess" && photo.hash) ? (
        <Band>{visitWords.photoKept}</Band>
      ) : null}
    </Screen>
  );
}

const timeOf = (iso: string) =>
  new Date(iso).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
