import { type ProcedureStep, sanitiserDoseMl } from "@tapside/procedures";
import type { StepDone } from "@tapside/records";
import { useState } from "react";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { messages } from "../words/messages.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { AmountEntry } from "./amount-entry.tsx";
import type { Noted } from "./procedure.tsx";
import { procedureWords as words } from "./procedure-words.ts";
import type { OpenVisit } from "./use-visit.ts";

interface AsksProps {
  readonly open: OpenVisit;
  readonly step: ProcedureStep;
  readonly done: StepDone | undefined;
  readonly onNote: (noted: Noted) => void;
}

/** What a step writes down: a dose with its arithmetic, a strip, litres, minutes. */
export function ProcedureAsks(props: AsksProps) {
  switch (props.step.asks) {
    case "dose":
      return <Dose {...props} />;
    case "strip":
    case "stripZero":
      return <Strip {...props} mustBeZero={props.step.asks === "stripZero"} />;
    case "litres":
      return <Amount {...props} label={words.rinsedLitres} unit="L" />;
    case "minutes":
      return <Amount {...props} label={words.contactMinutes} unit="min" />;
    default:
      return null;
  }
}

const signOf = (open: OpenVisit) => decimalSignOf(open.live.snapshot().book.settings.get("settings"));

const USUAL_TARGET_MG_PER_L = 50;

/** Strength and volume in, millilitres out, the sum in sight. */
function Dose({ open, done, onNote }: AsksProps) {
  const sign = signOf(open);
  const [target, setTarget] = useState<number | undefined>(done?.from?.targetMgPerL ?? USUAL_TARGET_MG_PER_L);
  const [litres, setLitres] = useState<number | undefined>(done?.from?.litres ?? open.file.unit.tankL);
  const [strength, setStrength] = useState<number | undefined>(done?.from?.strengthGPerL);
  const complete = target !== undefined && litres !== undefined && strength !== undefined;
  const from = { targetMgPerL: target ?? 0, litres: litres ?? 0, strengthGPerL: strength ?? 0 };
  const dose = complete ? sanitiserDoseMl(from) : undefined;
  return (
    <div className="asks">
      <AmountEntry label={words.target} unit="mg/L" value={target} decimalSign={sign} onChange={setTarget} />
      <AmountEntry label={words.litres} unit="L" value={litres} decimalSign={sign} onChange={setLitres} />
      <AmountEntry
        label={words.strength}
        unit="g/L"
        value={strength}
        decimalSign={sign}
        onChange={setStrength}
      />
      <p className="sum" role="status">
        {dose?.kind === "known"
          ? messages.visit.dose(from.targetMgPerL, from.litres, from.strengthGPerL, dose.value)
          : dose?.kind === "refused"
            ? sayWhyNot(dose)
            : words.doseNeeds}
      </p>
      {dose?.kind === "known" ? (
        <button
          type="button"
          className="choice"
          aria-pressed={done?.value !== undefined}
          onClick={() => onNote({ value: Number(dose.value.toPrecision(3)), unit: "mL", from })}
        >
          {words.takeDose} {words.doseOf(dose.value.toPrecision(3))}
        </button>
      ) : null}
    </div>
  );
}

const DETECTION_MG_PER_L = 0.1;

function Strip({ open, done, onNote, mustBeZero }: AsksProps & { readonly mustBeZero: boolean }) {
  const [value, setValue] = useState<number | undefined>(done?.notDetected ? undefined : done?.value);
  const tooMuch = mustBeZero && value !== undefined && value > 0;
  const take = (read: number | undefined) => {
    setValue(read);
    if (read !== undefined && !(mustBeZero && read > 0)) onNote({ value: read, unit: "mg/L" });
  };
  return (
    <div className="asks">
      {mustBeZero ? (
        <button
          type="button"
          className="choice"
          aria-pressed={done?.notDetected === true}
          onClick={() => onNote({ value: DETECTION_MG_PER_L, unit: "mg/L", notDetected: true })}
        >
          {words.nothingSeen}
        </button>
      ) : null}
      <Taken label={words.strip} unit="mg/L" open={open} value={value} onTake={take} />
      <p className="fixed-words" role="status">
        {tooMuch ? <span className="problem">{words.notZero}</span> : null}
      </p>
    </div>
  );
}

function Amount({
  open,
  done,
  onNote,
  label,
  unit,
}: AsksProps & { readonly label: string; readonly unit: string }) {
  return (
    <Taken
      label={label}
      unit={unit}
      open={open}
      value={unit === "min" ? done?.minutes : done?.value}
      onTake={(value) => value !== undefined && onNote(unit === "min" ? { minutes: value } : { value, unit })}
    />
  );
}

interface TakenProps {
  readonly label: string;
  readonly unit: string;
  readonly open: OpenVisit;
  readonly value: number | undefined;
  readonly onTake: (value: number | undefined) => void;
}

/** An amount with a key of its own that takes it, so that half a number is never kept. */
function Taken({ label, unit, open, value, onTake }: TakenProps) {
  const [typed, setTyped] = useState(value);
  return (
    <>
      <AmountEntry label={label} unit={unit} value={value} decimalSign={signOf(open)} onChange={setTyped} />
      <button type="button" className="choice plain take" onClick={() => onTake(typed)}>
        {words.take}
      </button>
    </>
  );
}
