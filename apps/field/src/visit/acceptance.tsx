import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { kindWords as words } from "./kind-words.ts";
import { photoPress } from "./photo.tsx";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords } from "./words.ts";

/** What whoever takes the unit over must know. */
const HAND_OVER = ["productUse", "backflowLicensed", "reducingValve"];

type Decision = "accepted" | "withReserve" | "refused";

/** Hand-over: who accepts, with what reserve. The baseline is provisional and says so. */
export function Acceptance({ open }: { open: OpenVisit }) {
  const { go, hint, steps } = useGoOn(open, "acceptance");
  const given = open.visit.answers.acceptance;
  const [name, setName] = useState(given?.name ?? open.file.site.askName ?? "");
  const [role, setRole] = useState(given?.role ?? open.file.site.askRole ?? "");
  const [note, setNote] = useState(given?.note ?? "");
  const [problem, setProblem] = useState("");
  const answer = (decision: Decision) => {
    if (!name.trim()) return setProblem(words.whoAccepts);
    open.write({
      "answer:acceptance": {
        name: name.trim(),
        role: role.trim(),
        decision,
        ...(note.trim() && { note: note.trim() }),
      },
    });
    go();
  };
  const choices: readonly (readonly [Decision, string])[] = [
    ["withReserve", words.withReserve],
    ["refused", words.refusedIt],
  ];
  return (
    <Screen
      title={words.acceptanceTitle}
      ticks={<VisitTicks steps={steps} here="acceptance" />}
      back={undoPress(open)}
      middle={photoPress(open, "asLeft")}
      next={{ label: words.accepted, hint, onPress: () => answer("accepted") }}
    >
      <Band tint>
        <p>{words.baseline}</p>
      </Band>
      <Band tint heavy>
        <strong>{visitWords.cautions}</strong>
        <ul className="cautions">
          {HAND_OVER.map((id) => (
            <li key={id}>{messages.caution(id)}</li>
          ))}
        </ul>
      </Band>
      <TextEntry label={visitWords.person} value={name} onChange={setName} />
      <TextEntry label={visitWords.role} value={role} onChange={setRole} />
      <TextEntry label={words.reserve} value={note} onChange={setNote} />
      {choices.map(([id, label]) => (
        <button
          type="button"
          key={id}
          className="choice"
          aria-pressed={given?.decision === id}
          onClick={() => answer(id)}
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
