import { checkValue, type KindId } from "@tapside/records";
import { type ReactNode, useId, useState } from "react";
import { useBook } from "../store/use-book.ts";
import { NumberEntry } from "./number-entry.tsx";

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
  const { live } = useBook();
  const write = (field: string, value: string | number | boolean | null | readonly string[]) =>
    void live.write(kind, id, { [field]: value });
  return (
    <>
      {specs.map((spec) => (
        <Entry key={`${id}:${spec.field}`} spec={spec} value={live.field(id, spec.field)} write={write} />
      ))}
    </>
  );
}

interface EntryProps {
  readonly spec: FieldSpec;
  readonly value: unknown;
  readonly write: (field: string, value: string | number | boolean | null | readonly string[]) => void;
}

function Entry({ spec, value, write }: EntryProps): ReactNode {
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
  const [raw, setRaw] = useState(value);
  const refusal =
    checkValue(raw).kind === "known" ? "" : "This text holds a sign that cannot be kept. Rub it out.";
  const problem = refusal || (required && raw.trim() === "" ? "A name is needed to find it again." : "");
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={raw}
        autoComplete="off"
        aria-describedby={`${id}-problem`}
        onChange={(event) => setRaw(event.target.value)}
        onBlur={() => refusal === "" && onChange(raw.trim() === "" ? null : raw.trim())}
      />
      <p id={`${id}-problem`} role="status">
        {problem && (raw !== "" || value !== "") ? <span className="problem">{problem}</span> : null}
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
  const today = new Date().toISOString().slice(0, 10);
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <input id={id} type="date" value={value} onChange={(event) => onChange(event.target.value || null)} />
      <p role="status">
        {value > today ? <span className="problem">This day has not come yet.</span> : null}
      </p>
    </div>
  );
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
