import type { RepairStep } from "@tapside/diagnosis";
import { Band } from "../look/band.tsx";
import { messages } from "../words/messages.ts";
import { causeWords as words } from "./words.ts";

interface RepairStepsProps {
  readonly steps: readonly RepairStep[];
  readonly onDone: (step: RepairStep) => void;
}

/** What to put right, in the order of hands: parts, minutes, what comes first, cautions, what to measure again. */
export function RepairSteps({ steps, onDone }: RepairStepsProps) {
  return steps.map((step) => (
    <section key={step.cause} aria-label={words.causes[step.cause]}>
      <Band tint>
        <h2>{words.putRightOf(words.causes[step.cause])}</h2>
        <p>
          {step.parts.length > 0
            ? words.needs(step.parts.map((part) => words.parts[part]).join(", "))
            : words.noPart}
          {`, ${words.minutes(step.minutes)}`}
        </p>
      </Band>
      {step.first.length > 0 ? (
        <Band fixed>
          <strong>{words.first(step.first.map((cause) => words.causes[cause]).join(", "))}</strong>
        </Band>
      ) : null}
      <Band>
        {step.cautions.map((caution) => (
          <p key={caution}>{words.cautions[caution]}</p>
        ))}
        <p>
          <strong>{messages.localCode}</strong>
        </p>
      </Band>
      <Band press={{ onPress: () => onDone(step) }}>
        <span className="name">{words.done}</span>
        <p className="note">{step.measureAgain.map((test) => words.tests[test]).join(", ")}</p>
      </Band>
    </section>
  ));
}
