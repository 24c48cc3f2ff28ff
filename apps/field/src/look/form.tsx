import { checkValue, type KindId } from "@tapside/records";
import { type ReactNode, useId } from "react";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { NumberEntry } from "./number-entry.tsx";
import { useDraft } from "./use-draft.ts";

interface SpecBase {
  readonly field: string;
  readonly label: string;
}

/** One entry of a form: what it is called, and what may stand in it. */
export type FieldSpec = SpecBase &
  (
    | { readonly kind: "text"; readonly required?: boolean }
    | { readonly kind: "date" }
    | {
        readonly kind: "number";
        readonly baseUnit: string;
        readonly units: readonly string[];
        readonly range?: readonly [number, number];
      }
    | { readonly kind: "choice"; readonly choices: readonly (readonly [value: string, label: string])[] }
    | { readonly kind: "flag" }
    | { readonly kind: "set"; readonly choices: readonly (readonly [value: string, label: string])[] }
  );

interface FormProps {
  readonly kind: KindId;
  readonly id: string;
  readonly specs: readonly FieldSpec[];
}

/** Entries of one record. Each is kept the moment it is left; there is nothing to save. */
export function Form({ kind, id, specs }: FormProps) {
  const { live, snapshot } = useBook();
  const decimalSign = snapshot.book.settings.get("settings")?.decimalSign ?? ".";
  const write = (field: string, value: string | number | boolean | null | readonly string[]) =>
    void live.write(kind, id, { [field]: value });
  return (
    <>
      {specs.map((spec) => (
        <Entry
          key={`${id}:${spec.field}:${decimalSign}`}
          spec={spec}
          value={live.field(id, spec.field)}
          decimalSign={decimalSign}
          write={write}
        />
      ))}
    </>
  );
}

interface EntryProps {
  readonly spec: FieldSpec;
  readonly value: unknown;
  readonly decimalSign: string;
  readonly write: (field: string, value: string | number | boolean | null | readonly string[]) => void;
}

function Entry({ spec, value, decimalSign, write }: EntryProps): ReactNode {
  const keep = (next: string | number | boolean | null | readonly string[]) => write(spec.field, next);
  switch (spec.kind) {
    case "text":
      return (
        <TextField
          label={spec.label}
          value={asText(value)}
          required={spec.required ?? false}
          onChange={keep}
        />
      );
    case "date":
      return <DateField label={spec.label} value={asText(value)} onChange={keep} />;
    case "number":
      return (
        <NumberEntry
          label={spec.label}
          value={typeof value === "number" ? value : undefined}
          baseUnit={spec.baseUnit}
          units={spec.units}
          decimalSign={decimalSign}
          {...(spec.range && { range: spec.range })}
          onChange={keep}
        />
      );
    case "choice":
      return <ChoiceField label={spec.label} value={asText(value)} choices={spec.choices} onChange={keep} />;
    case "flag":
      return (
        <button
          type="button"
          className="choice"
          aria-pressed={value === true}
          onClick={() => keep(value !== true)}
        >
          {spec.label}
        </button>
      );
    case "set":
      return <SetField label={spec.label} value={asSet(value)} choices={spec.choices} onChange={keep} />;
  }
}

const asText = (value: unknown) => (typeof value === "string" ? value : "");
const asSet = (value: unknown): readonly string[] => (Array.isArray(value) ? (value as string[]) : []);

function TextField({
  label,
  value,
  required,
  onChange,
}: {
  label: string;
  value: string;
  required: boolean;
  onChange: (text: string | null) => void;
}) {
  const id = useId();
  const draft = useDraft(value, (kept) => kept);
  const text = draft.raw.trim();
  const refusal = checkValue(draft.raw).kind === "known" ? "" : words.unkeepable;
  const problem = refusal || (required && text === "" ? words.nameNeeded : "");
  const keep = () => {
    if (problem !== "" || !draft.touched) return;
    draft.take(text);
    onChange(text === "" ? null : text);
  };
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={draft.raw}
        autoComplete="off"
        aria-invalid={problem !== ""}
        aria-describedby={`${id}-problem`}
        onChange={(event) => draft.type(event.target.value)}
        onBlur={keep}
      />
      <p id={`${id}-problem`} role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </div>
  );
}

function DateField({
  label,
  value,
  onChange,
}: {
  label: string;
  value: string;
  onChange: (text: string | null) => void;
}) {
  const id = useId();
  const draft = useDraft(value, (kept) => kept);
  const keep = (input: HTMLInputElement) => {
    if (input.validity.badInput) return draft.refuse(words.noSuchDay);
    if (!draft.touched) return draft.refuse("");
    if (draft.raw > today()) return draft.refuse(words.dayToCome);
    if (draft.raw !== "" && draft.raw < EARLIEST) return draft.refuse(words.dayTooOld);
    draft.take(draft.raw);
    onChange(draft.raw || null);
  };
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="date"
        value={draft.raw}
        aria-invalid={draft.problem !== ""}
        aria-describedby={`${id}-problem`}
        onChange={(event) => draft.type(event.target.value)}
        onBlur={(event) => keep(event.target)}
      />
      <p id={`${id}-problem`} role="status">
        {draft.problem ? <span className="problem">{draft.problem}</span> : null}
      </p>
    </div>
  );
}

/** No part of a unit in service is older. */
const EARLIEST = "1980-01-01";

/** The day on this phone's own calendar. */
function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

type Choices = readonly (readonly [value: string, label: string])[];

function ChoiceField({
  label,
  value,
  choices,
  onChange,
}: {
  label: string;
  value: string;
  choices: Choices;
  onChange: (text: string | null) => void;
}) {
  const id = useId();
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value || null)}>
        <option value="">–</option>
        {choices.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}

function SetField({
  label,
  value,
  choices,
  onChange,
}: {
  label: string;
  value: readonly string[];
  choices: Choices;
  onChange: (set: readonly string[]) => void;
}) {
  const turn = (one: string) =>
    onChange(value.includes(one) ? value.filter((other) => other !== one) : [...value, one]);
  return (
    <fieldset className="set">
      <legend className="band">{label}</legend>
      {choices.map(([one, text]) => (
        <button
          type="button"
          key={one}
          className="choice"
          aria-pressed={value.includes(one)}
          onClick={() => turn(one)}
        >
          {text}
        </button>
      ))}
    </fieldset>
  );
}
