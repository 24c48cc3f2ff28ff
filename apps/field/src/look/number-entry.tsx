import { convert, known, type Outcome, parseReading } from "@tapside/quantities";
import { useId, useState } from "react";
import { sayWhyNot } from "../words/say-why-not.ts";
import { setupWords as words } from "../words/setup.ts";
import { type DraftStore, useDraft, useTryAgain } from "./use-draft.ts";

interface NumberEntryProps {
  readonly label: string;
  /** Kept value in `baseUnit`; undefined when blank. */
  readonly value: number | undefined;
  readonly spec: {
    readonly baseUnit: string;
    /** Units offered. */
    readonly units: readonly string[];
    readonly range?: readonly [low: number, high: number];
    readonly otherwise?: number;
  };
  readonly firstUnit: string;
  readonly decimalSign: string;
  readonly store: DraftStore;
  readonly onChange: (value: number | null) => void;
  readonly onUnit: (unit: string) => void;
}

/**
 * A number of the set-up: typed text stays as typed, its value is kept in the base unit. What cannot be a number, or
 * lies outside what the thing can be, is refused by a sentence at a fixed place and nothing is lost.
 */
export function NumberEntry(props: NumberEntryProps) {
  const { label, value, spec, decimalSign, onUnit } = props;
  const { baseUnit, units } = spec;
  const id = useId();
  const [unit, setUnit] = useState(props.firstUnit);
  const inSign = (text: string) => text.replace(".", decimalSign);
  const draft = useDraft(value, (kept) => inSign(shownIn(kept, baseUnit, unit)), props.store);
  const take = (inUnit: string) => {
    const taken = readAs(draft.raw, inUnit, spec);
    if (taken.kind === "refusal") return draft.refuse(taken.text);
    draft.take(taken.value);
    props.onChange(taken.value ?? null);
  };
  /** What is kept stays what it is and is shown in the other unit; a text not taken yet is tried again in it. */
  const turn = (next: string) => {
    setUnit(next);
    onUnit(next);
    if (draft.touched) take(next);
    else draft.show(inSign(shownIn(value, baseUnit, next)));
  };
  useTryAgain(draft.touched, () => take(unit));
  const following = units[(units.indexOf(unit) + 1) % units.length] ?? unit;
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <div className={unit ? "in-unit" : undefined}>
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={draft.raw}
          placeholder={inSign(shownIn(spec.otherwise, baseUnit, unit))}
          aria-invalid={draft.problem !== ""}
          aria-describedby={`${id}-problem`}
          onChange={(event) => draft.type(event.target.value)}
          onBlur={() => draft.touched && take(unit)}
        />
        {units.length > 1 ? (
          <button type="button" className="unit-switch" onClick={() => turn(following)}>
            {unit}
          </button>
        ) : unit ? (
          <span className="unit">{unit}</span>
        ) : null}
      </div>
      <p id={`${id}-problem`} role="status">
        {draft.problem ? <span className="problem">{draft.problem}</span> : null}
      </p>
    </div>
  );
}

type Taken =
  | { readonly kind: "value"; readonly value: number | undefined }
  | { readonly kind: "refusal"; readonly text: string };

/** The typed text in the base unit; blank is a fair answer. */
function readAs(raw: string, unit: string, { baseUnit, range }: NumberEntryProps["spec"]): Taken {
  if (raw.trim() === "") return { kind: "value", value: undefined };
  const typed = parseReading(raw);
  const base = typed.kind === "known" ? inUnitOf(typed.value.value, unit, baseUnit) : typed;
  if (base.kind !== "known") return { kind: "refusal", text: sayWhyNot(base) };
  if (!range || (base.value >= range[0] && base.value <= range[1]))
    return { kind: "value", value: base.value };
  const [low, high] = range.map((edge) => shownIn(edge, baseUnit, unit));
  return { kind: "refusal", text: words.possible(`${low}`, `${high}`, unit) };
}

/** A kept number as it is shown in a unit; empty when there is none. */
export function shownIn(value: number | undefined, from: string, to: string): string {
  if (value === undefined || value === null) return "";
  const outcome = inUnitOf(value, from, to);
  return outcome.kind === "known" ? String(Number(outcome.value.toPrecision(6))) : "";
}

/** A plain number has no unit to convert. */
const inUnitOf = (value: number, from: string, to: string): Outcome<number> =>
  from === to ? known(value) : convert(value, from, to);
