import { procedureOf } from "@tapside/procedures";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { ProcedureScreen } from "./procedure.tsx";
import { taskTitle } from "./step-title.ts";
import { TextEntry } from "./text-entry.tsx";
import { useLot } from "./use-lot.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

/** One piece of work: its procedure step by step where there is one, else its cautions. */
export function WorkScreen({ open, task }: { open: OpenVisit; task: string }) {
  return procedureOf(task).length > 0 ? (
    <ProcedureScreen open={open} task={task} />
  ) : (
    <PlainWork open={open} task={task} />
  );
}

function PlainWork({ open, task }: { open: OpenVisit; task: string }) {
  const { go, hint, steps } = useGoOn(open, `work:${task}`);
  const proposed = open.assessment.tasks.find((one) => one.id === task);
  const given = open.visit.work[task];
  const lot = useLot(given);
  const [reason, setReason] = useState(given?.reason ?? "");
  const answer = (state: "done" | "left") => {
    const text = state === "done" ? lot.fields : { ...(reason.trim() && { reason: reason.trim() }) };
    open.write({ [`work:${task}`]: { state, ...text, ...(proposed?.part && { part: proposed.part }) } });
    go();
  };
  return (
    <Screen
      title={taskTitle(task)}
      subtitle={proposed ? messages.taskWhy(proposed) : undefined}
      ticks={<VisitTicks steps={steps} here={`work:${task}`} />}
      back={undoPress(open)}
      middle={photoPress(open, `work:${task}`)}
      next={{ label: words.done, hint, onPress: () => answer("done") }}
    >
      <Band tint heavy>
        <strong>{words.cautions}</strong>
        <ul className="cautions">
          {(proposed?.cautions ?? []).map((id) => (
            <li key={id}>{messages.caution(id)}</li>
          ))}
          {proposed?.cautions.length ? null : <li>{words.noCautions}</li>}
        </ul>
      </Band>
      {task.startsWith("replace:") ? lot.entry : null}
      <TextEntry label={words.why} value={reason} onChange={setReason} />
      <button
        type="button"
        className="choice"
        aria-pressed={given?.state === "left"}
        onClick={() => answer("left")}
      >
        {words.left}
      </button>
    </Screen>
  );
}
