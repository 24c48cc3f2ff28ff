import type { ExpectedId } from "@tapside/assessment";
import { formatRange, inSign } from "@tapside/words";
import { Link } from "wouter";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { timerWords } from "../timers/words.ts";
import { messages } from "../words/messages.ts";
import { useGoOn } from "./go-on.ts";
import { kindWords } from "./kind-words.ts";
import { Numeral } from "./numeral.tsx";
import { photoPress } from "./photo.tsx";
import { procedureWords } from "./procedure-words.ts";
import { stepTitle } from "./step-title.ts";
import type { Step } from "./steps.ts";
import { StillToType } from "./still-to-type.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { WaterLine } from "./water-line.tsx";
import { visitWords as words } from "./words.ts";

/** Every step of the visit along the water: solid = read, hollow = what a sound unit should read today. */
export function Overview({ open }: { open: OpenVisit }) {
  const { steps, to, hint, next } = useGoOn(open, "");
  const done = steps.every((step) => step.done);
  return (
    <Screen
      title={open.file.site.name ?? ""}
      subtitle={[messages.visitKinds[open.visit.kind ?? "annual"], open.file.unit.name, open.file.point.name]
        .filter(Boolean)
        .join(" · ")}
      ticks={<VisitTicks steps={steps} here="" />}
      back={{ label: words.back, to: `/unit/${open.file.unit.id}` }}
      middle={photoPress(open, "asFound")}
      next={
        done
          ? { label: words.toUnit, to: `/unit/${open.file.unit.id}` }
          : { label: hint, hint: next.reading ? words.slotHint[next.reading.slot] : undefined, to }
      }
    >
      <StillToType open={open} />
      <div className="along-water">
        <WaterLine open={open} />
        {steps.map((step) => (
          <StepBand key={step.id} step={step} open={open} />
        ))}
      </div>
      <Band tint press={{ to: `${open.base}/expected` }}>
        <span className="name">{words.expectedTitle}</span>
      </Band>
      <Band tint press={{ to: `${open.base}/also` }}>
        <span className="name">{words.also}</span>
        <p className="note">{words.alsoHint}</p>
      </Band>
      <Band tint press={{ to: `${open.base}/timers` }}>
        <span className="name">{timerWords.open}</span>
      </Band>
      <Band tint press={{ to: `${open.base}/advice` }}>
        <span className="name">{procedureWords.advice}</span>
      </Band>
      <Band tint press={{ to: `${open.base}/times` }}>
        <span className="name">{kindWords.timesTitle}</span>
      </Band>
      {open.visit.closed || open.visit.kind === "noAccess" ? null : (
        <Band tint press={{ to: `${open.base}/noAccess` }}>
          <span className="name">{kindWords.aborted}</span>
        </Band>
      )}
    </Screen>
  );
}

function StepBand({ step, open }: { step: Step; open: OpenVisit }) {
  const className = `band water step ${step.reading ? "number" : "tint"}`;
  return (
    <Link href={`${open.base}/${step.path}`} className={className} data-step={step.id}>
      <span className="row">
        <span>
          {stepTitle(step)}
          {step.reading?.phase === "asLeft" ? `, ${messages.phases.asLeft.toLowerCase()}` : ""}
        </span>
        <span className="note">
          {step.reading ? "" : step.done ? words.done.toLowerCase() : words.notYet}
        </span>
      </span>
      {step.reading ? <StepNumber open={open} step={step} /> : null}
    </Link>
  );
}

function StepNumber({ open, step }: { open: OpenVisit; step: Step }) {
  const { phase, slot } = step.reading!;
  const reading = open.visit.readings[phase][slot];
  if (reading?.value != null) {
    const text = reading.notDetected
      ? `<${inSign(reading.raw, messages.decimalSign)}`
      : reading.volumeL
        ? reading.value.toFixed(0)
        : inSign(reading.raw, messages.decimalSign);
    const cup = reading.volumeL ? `${reading.volumeL * 1000} mL` : reading.scale;
    const unit = [reading.unit, cup, reading.doubtful && words.doubtful.toLowerCase()];
    return <Numeral text={text} unit={unit.filter(Boolean).join(", ")} height={40} />;
  }
  if (reading) return <p className="note">{words.photoPending}</p>;
  if (step.done) return <p className="note">{words.passed}</p>;
  const { expected } = open.assessment;
  const range = expected.kind === "known" ? expected.value[slot as ExpectedId] : undefined;
  if (!range) return <p className="note">{words.notYet}</p>;
  const text = formatRange(range, messages.decimalSign);
  return (
    <Numeral
      text={text}
      unit={messages.unit(range.unit)}
      height={40}
      hollow
      name={`${words.expected} ${text} ${range.unit}`}
    />
  );
}
