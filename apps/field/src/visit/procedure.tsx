import { isStepByStep, type ProcedureStep, procedureOf, scaldTime } from "@tapside/procedures";
import type { FieldValue, StepDone } from "@tapside/records";
import { useState } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { ProcedureAsks } from "./procedure-asks.tsx";
import { ProcedureWait } from "./procedure-wait.tsx";
import { procedureWords as words } from "./procedure-words.ts";
import { taskTitle } from "./step-title.ts";
import { TextEntry } from "./text-entry.tsx";
import { useLot } from "./use-lot.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords } from "./words.ts";

/** What one step wrote down; its time is added when it is kept. */
export type Noted = Readonly<Record<string, FieldValue>>;

/** A procedure: every step with the caution that stands where the hand is. What is known by heart is one tap. */
export function ProcedureScreen({ open, task }: { open: OpenVisit; task: string }) {
  const { go, hint, steps: visitSteps } = useGoOn(open, `work:${task}`);
  const [, navigate] = useLocation();
  const proposed = open.assessment.tasks.find((one) => one.id === task);
  const given = open.visit.work[task];
  const lot = useLot(given);
  const [reason, setReason] = useState(given?.reason ?? "");
  const steps = procedureOf(task);
  const doneOf = (step: ProcedureStep) => open.visit.steps?.[`${task}:${step.id}`];
  const current = steps.find((step) => !doneOf(step));
  const stepwise = isStepByStep(task);
  const answer = (state: "done" | "left") => {
    const text: Readonly<Record<string, string>> =
      state === "done" ? lot.fields : { ...(reason.trim() && { reason: reason.trim() }) };
    open.write({
      [`work:${task}`]: { state, ...text, ...(proposed?.part && { part: proposed.part }) },
    });
    if (task === "setAirCharge" && state === "done") navigate(`${open.base}/read/asLeft/airCharge`);
    else go();
  };
  const note = (step: ProcedureStep, noted: Noted) =>
    open.write({ [`step:${task}:${step.id}`]: { at: new Date().toISOString(), ...noted } });
  const next = () => {
    if (!stepwise || !current) return answer("done");
    note(current, {});
    if (steps.every((step) => step === current || doneOf(step))) answer("done");
  };
  const stepTitle = (step: ProcedureStep) => messages.visit.steps[step.id]?.title ?? step.id;
  return (
    <Screen
      title={taskTitle(task)}
      subtitle={proposed ? messages.taskWhy(proposed) : undefined}
      ticks={<VisitTicks steps={visitSteps} here={`work:${task}`} />}
      back={undoPress(open)}
      middle={photoPress(open, `work:${task}`)}
      next={{ label: words.stepDone, hint: stepwise && current ? stepTitle(current) : hint, onPress: next }}
    >
      <ol className="procedure">
        {steps.map((step) => (
          <li
            key={step.id}
            className="band"
            data-done={doneOf(step) !== undefined}
            aria-current={step === current ? "step" : undefined}
          >
            <StepHead
              title={stepTitle(step)}
              done={doneOf(step) !== undefined}
              onTurn={() =>
                doneOf(step) ? open.write({ [`step:${task}:${step.id}`]: null }) : note(step, {})
              }
            />
            {step === current || !stepwise ? (
              <>
                <StepWords step={step} />
                {step.wait ? <ProcedureWait open={open} task={task} wait={step.wait} /> : null}
                {step.asks === "lot" ? (
                  lot.entry
                ) : step.asks ? (
                  <ProcedureAsks
                    open={open}
                    step={step}
                    done={doneOf(step)}
                    onNote={(noted) => note(step, noted)}
                  />
                ) : null}
              </>
            ) : (
              <NotedWords done={doneOf(step)} />
            )}
          </li>
        ))}
      </ol>
      {stepwise ? (
        <button
          type="button"
          className="choice"
          aria-pressed={given?.state === "done"}
          onClick={() => answer("done")}
        >
          <span>
            {words.allDone}
            <span className="note">{words.allDoneHint}</span>
          </span>
        </button>
      ) : null}
      <Band tint>
        <p>{messages.visit.says.labelGoverns}</p>
      </Band>
      <TextEntry label={visitWords.why} value={reason} onChange={setReason} />
      <button
        type="button"
        className="choice"
        aria-pressed={given?.state === "left"}
        onClick={() => answer("left")}
      >
        {visitWords.left}
      </button>
    </Screen>
  );
}

/** Solid square = done; a tap turns it. */
function StepHead({ title, done, onTurn }: { title: string; done: boolean; onTurn: () => void }) {
  return (
    <button type="button" className="step-head" aria-pressed={done} onClick={onTurn}>
      <span className={done ? "step-mark is-done" : "step-mark"} aria-hidden="true" />
      <strong className="name">{title}</strong>
    </button>
  );
}

/** What is done, and the cautions that stand here. */
function StepWords({ step }: { step: ProcedureStep }) {
  const text = messages.visit.steps[step.id]?.text;
  return (
    <>
      {text ? <p>{text}</p> : null}
      {step.cautions.length > 0 ? (
        <ul className="cautions here">
          {step.cautions.map((id) => (
            <li key={id}>
              {messages.caution(id)} {id === "hotSurfaces" ? scaldWords() : ""}
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
}

const HOT_C = 60;

function scaldWords(): string {
  const time = scaldTime(HOT_C);
  return time.kind === "known" ? words.scald(HOT_C, time.value.relation, time.value.seconds) : "";
}

function NotedWords({ done }: { done: StepDone | undefined }) {
  if (!done) return null;
  const text = messages.visit.step("", done).replace(/^, /, "");
  return text ? <p className="note">{text}</p> : null;
}
