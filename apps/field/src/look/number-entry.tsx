import { useId, useState } from "react";
import { type NumberSpec, readNumber, shownIn } from "./read-number.ts";
import { type DraftStore, useDraft, useTryAgain } from "./use-draft.ts";

interface NumberEntryProps {
  readonly label: string;
  /** Kept value in `baseUnit`; undefined when blank. */
  readonly value: number | undefined;
  readonly spec: NumberSpec;
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
    const taken = readNumber(draft.raw, inUnit, spec);
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
