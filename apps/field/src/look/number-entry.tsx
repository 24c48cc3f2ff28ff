import { convert, known, type Outcome, parseReading } from "@tapside/quantities";
import { useId, useState } from "react";
import { sayWhyNot } from "../words/say-why-not.ts";
import { useDraft } from "./use-draft.ts";

interface NumberEntryProps {
  readonly label: string;
  /** Kept value in `baseUnit`; undefined when blank. */
  readonly value: number | undefined;
  readonly baseUnit: string;
  /** Units offered; the first is shown. */
  readonly units: readonly string[];
  readonly range?: readonly [low: number, high: number];
  readonly decimalSign?: string;
  readonly onChange: (value: number | null) => void;
}

/**
 * A number of the set-up: typed text stays as typed, its value is kept in the base unit. What cannot be a number, or
 * lies outside what the thing can be, is refused by a sentence at a fixed place and nothing is lost.
 */
export function NumberEntry({
  label,
  value,
  baseUnit,
  units,
  range,
  decimalSign = ".",
  onChange,
}: NumberEntryProps) {
  const id = useId();
  const [unit, setUnit] = useState(units[0] ?? baseUnit);
  const inSign = (text: string) => text.replace(".", decimalSign);
  const draft = useDraft(value, (kept) => inSign(shown(kept, baseUnit, unit)));
  const { raw, problem } = draft;
  const take = (inUnit: string) => {
    if (raw.trim() === "") {
      draft.take(undefined);
      return onChange(null);
    }
    const typed = parseReading(raw);
    if (typed.kind !== "known") return draft.refuse(sayWhyNot(typed));
    const base = inUnitOf(typed.value.value, inUnit, baseUnit);
    if (base.kind !== "known") return draft.refuse(sayWhyNot(base));
    if (range && (base.value < range[0] || base.value > range[1])) {
      return draft.refuse(
        `${shown(range[0], baseUnit, inUnit)} to ${shown(range[1], baseUnit, inUnit)} ${inUnit} is possible here.`,
      );
    }
    draft.take(base.value);
    onChange(base.value);
  };
  /** What is kept stays what it is and is shown in the other unit; a text not taken yet is tried again in it. */
  const turn = (next: string) => {
    setUnit(next);
    if (draft.touched) take(next);
    else draft.show(inSign(shown(value, baseUnit, next)));
  };
  const following = units[(units.indexOf(unit) + 1) % units.length] ?? unit;
  return (
    <div className="band entry">
      <div className="row">
        <label htmlFor={id}>{label}</label>
        {units.length > 1 ? (
          <button type="button" className="unit-switch" onClick={() => turn(following)}>
            {unit}
          </button>
        ) : (
          <span className="unit">{unit}</span>
        )}
      </div>
      <input
        id={id}
        inputMode="decimal"
        autoComplete="off"
        value={raw}
        aria-invalid={problem !== ""}
        aria-describedby={`${id}-problem`}
        onChange={(event) => draft.type(event.target.value)}
        onBlur={() => draft.touched && take(unit)}
      />
      <p id={`${id}-problem`} role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </div>
  );
}

function shown(value: number | undefined, from: string, to: string): string {
  if (value === undefined || value === null) return "";
  const outcome = inUnitOf(value, from, to);
  return outcome.kind === "known" ? String(Number(outcome.value.toPrecision(6))) : "";
}

/** A plain number has no unit to convert. */
const inUnitOf = (value: number, from: string, to: string): Outcome<number> =>
  from === to ? known(value) : convert(value, from, to);
