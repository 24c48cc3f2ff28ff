import { useState } from "react";
import { Screen } from "../look/screen.tsx";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { SignatureGlass } from "./signature-glass.tsx";
import { TextEntry } from "./text-entry.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

/** Who was there at the end: on the glass, by name and role, or nobody. */
export function Sign({ open }: { open: OpenVisit }) {
  const { go, hint, steps } = useGoOn(open, "sign");
  const { site } = open.file;
  const [other, setOther] = useState(!site.askName);
  const [name, setName] = useState(site.askName ?? "");
  const [role, setRole] = useState(site.askRole ?? "");
  const [technician, setTechnician] = useState(open.visit.technician ?? "");
  const [path, setPath] = useState("");
  const [problem, setProblem] = useState("");
  const answer = (kind: "signed" | "notPresent" | "refused") => {
    if (!technician.trim()) return setProblem(words.needTechnician);
    if (kind === "signed" && !name.trim()) return setProblem(words.needName);
    keepTechnician(open, technician.trim());
    const person: Readonly<Record<string, string>> =
      kind === "notPresent" ? {} : { name: name.trim(), role: role.trim() };
    open.write({ "answer:signature": { kind, ...person, ...(path && { path }) } });
    go();
  };
  return (
    <Screen
      title={words.titles.sign!}
      ticks={<VisitTicks steps={steps} here="sign" />}
      back={undoPress(open)}
      middle={photoPress(open, "asLeft")}
      next={{
        label: words.next,
        hint: name.trim() ? words.signed(name, role) : hint,
        onPress: () => answer("signed"),
      }}
    >
      {open.visit.technician ? null : (
        <TextEntry label={words.technician} value={technician} onChange={setTechnician} />
      )}
      {other ? (
        <>
          <TextEntry label={words.person} value={name} onChange={setName} />
          <TextEntry label={words.role} value={role} onChange={setRole} />
        </>
      ) : (
        <button type="button" className="choice plain" onClick={() => setOther(true)}>
          <span>
            {words.signed(name, role)}
            <span className="note">{words.writeName}</span>
          </span>
        </button>
      )}
      <SignatureGlass path={path} onChange={setPath} />
      <button type="button" className="choice" onClick={() => answer("notPresent")}>
        {words.notPresent}
      </button>
      <button type="button" className="choice" onClick={() => answer("refused")}>
        {words.refusedSign}
      </button>
      <p className="band" role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </Screen>
  );
}

function keepTechnician(open: OpenVisit, technician: string) {
  if (open.visit.technician === technician) return;
  open.write({ technician });
  void open.live.write("settings", "settings", { technician });
}
