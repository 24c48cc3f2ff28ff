import { useState } from "react";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { procedureWords as words } from "./procedure-words.ts";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords } from "./words.ts";

type Decision = "accepted" | "refused" | "undecided";
const DECISIONS: readonly Decision[] = ["accepted", "refused", "undecided"];

/** Advice: to whom, what they decided, until when. It stays open until it is done; a refusal is kept for good. */
export function AdviceScreen({ open }: { open: OpenVisit }) {
  const { to, hint } = useGoOn(open, "");
  const { site, unit } = open.file;
  const [text, setText] = useState("");
  const [name, setName] = useState(site.askName ?? "");
  const [role, setRole] = useState(site.askRole ?? "");
  const [until, setUntil] = useState("");
  const [said, setSaid] = useState("");
  const [byPhone, setByPhone] = useState(false);
  const [problem, setProblem] = useState("");
  const keep = (decision: Decision) => {
    if (!text.trim()) return setProblem(words.needAdvice);
    if (!name.trim()) return setProblem(words.needPerson);
    const today = todayIso();
    const refusal = {
      refusedBy: name.trim(),
      refusedRole: role.trim(),
      refusedOn: today,
      refusedVisit: open.visit.id,
      ...(said.trim() && { refusedWords: said.trim() }),
    };
    void open.live.write("openPoint", `${open.visit.id}:advice:${open.live.newId()}`, {
      unit: unit.id,
      openedVisit: open.visit.id,
      code: "advice",
      detail: text.trim(),
      owner: [name.trim(), role.trim()].filter(Boolean).join(", "),
      ...(until && { due: until }),
      ...(byPhone && { byPhone }),
      ...(decision === "refused" ? refusal : { agreed: decision }),
    });
    setText("");
    setSaid("");
    setUntil("");
    setProblem("");
  };
  const given = [...open.file.openPoints, ...open.file.settledPoints].filter(
    (point) => point.code === "advice" && point.openedVisit === open.visit.id,
  );
  return (
    <Screen
      title={words.advice}
      subtitle={words.adviceHint}
      back={undoPress(open)}
      middle={photoPress(open, "advice")}
      next={{ label: visitWords.next, hint, to }}
    >
      <TextEntry label={words.adviceText} value={text} onChange={setText} />
      <TextEntry label={words.toWhom} value={name} onChange={setName} />
      <TextEntry label={visitWords.role} value={role} onChange={setRole} />
      <button type="button" className="choice" aria-pressed={byPhone} onClick={() => setByPhone(!byPhone)}>
        {words.byPhone}
      </button>
      <TextEntry label={words.adviceUntil} value={until} onChange={setUntil} type="date" />
      <TextEntry label={words.theirWords} value={said} onChange={setSaid} />
      {DECISIONS.map((decision) => (
        <button type="button" key={decision} className="choice plain" onClick={() => keep(decision)}>
          {words[decision]}
        </button>
      ))}
      <p className="band" role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
      {given.map((point) => (
        <Band key={point.id} tint>
          {messages.visit.advice(point)}
        </Band>
      ))}
    </Screen>
  );
}
