import { useState } from "react";
import { Screen } from "../look/screen.tsx";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords as words } from "./words.ts";

type Decision = "keepBypassed" | "putInUse";

/** The unit is bypassed: who was asked, what they decided, until when. */
export function Bypass({ open }: { open: OpenVisit }) {
  const { go, hint } = useGoOn(open, "bypass");
  const given = open.visit.answers.bypass;
  const [name, setName] = useState(given?.name ?? open.file.site.askName ?? "");
  const [role, setRole] = useState(given?.role ?? open.file.site.askRole ?? "");
  const [until, setUntil] = useState(given?.until ?? "");
  const [seal, setSeal] = useState(given?.seal ?? "");
  const [decision, setDecision] = useState<Decision | undefined>(given?.decision);
  const [problem, setProblem] = useState("");
  const keep = () => {
    if (!name.trim()) return setProblem(words.needPerson);
    if (!decision) return setProblem(words.choose);
    if (decision === "keepBypassed" && !/^\d{4}-\d{2}-\d{2}$/.test(until)) return setProblem(words.needUntil);
    open.write({
      "answer:bypass": {
        name: name.trim(),
        role: role.trim(),
        decision,
        ...(until && { until }),
        ...(seal && { seal: seal.trim() }),
      },
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
      <TextEntry label={words.person} value={name} onChange={setName} />
      <TextEntry label={words.role} value={role} onChange={setRole} />
      {(["keepBypassed", "putInUse"] as const).map((id) => (
        <button
          type="button"
          key={id}
          className="choice"
          aria-pressed={decision === id}
          onClick={() => setDecision(id)}
        >
          {words[id]}
        </button>
      ))}
      {decision === "keepBypassed" ? (
        <>
          <TextEntry label={words.until} value={until} onChange={setUntil} type="date" />
          <TextEntry label={words.seal} value={seal} onChange={setSeal} />
        </>
      ) : null}
      <p className="band" role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </Screen>
  );
}
