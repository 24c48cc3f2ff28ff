import type { KindId } from "@tapside/records";
import type { ReactNode } from "react";
import { useBook } from "../store/use-book.ts";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { setupWords } from "../words/setup.ts";
import { draftStore } from "./draft-store.ts";
import { ChoiceField, type Choices } from "./fields/choice-field.tsx";
import { DateField } from "./fields/date-field.tsx";
import { SetField } from "./fields/set-field.tsx";
import { TextField } from "./fields/text-field.tsx";
import { TimeField } from "./fields/time-field.tsx";
import { firstUnit, rememberUnit } from "./first-unit.ts";
import { NumberEntry } from "./number-entry.tsx";
import type { NumberSpec } from "./read-number.ts";
import type { DraftStore } from "./use-draft.ts";

interface SpecBase {
  readonly field: string;
  readonly label: string;
}

/** One entry of a form: what it is called, and what may stand in it. */
export type FieldSpec = SpecBase &
  (
    | { readonly kind: "text"; readonly required?: boolean }
    | { readonly kind: "date"; readonly toCome?: boolean }
    | { readonly kind: "time" }
    | ({ readonly kind: "number" } & NumberSpec)
    | {
        readonly kind: "choice";
        readonly choices: Choices;
        readonly ask?: string;
        readonly otherwise?: string;
      }
    | { readonly kind: "flag" }
    /** Yes, no, or not known yet. */
    | { readonly kind: "yesNo"; readonly ask?: string }
    | { readonly kind: "set"; readonly choices: Choices }
  );

type Kept = string | number | boolean | null | readonly string[];

interface FormProps {
  readonly kind: KindId;
  readonly id: string;
  readonly specs: readonly FieldSpec[];
}

/** Entries of one record. Each is kept the moment it is left; there is nothing to save. */
export function Form({ kind, id, specs }: FormProps) {
  const { live, snapshot } = useBook();
  const settings = snapshot.book.settings.get("settings");
  const decimalSign = decimalSignOf(settings);
  return (
    <>
      {specs.map((spec) => (
        <Entry
          key={`${id}:${spec.field}:${decimalSign}`}
          spec={spec}
          value={live.field(id, spec.field)}
          decimalSign={decimalSign}
          firstUnit={
            spec.kind === "number"
              ? firstUnit(live, spec, live.field(id, spec.field), settings?.pressureUnit)
              : ""
          }
          store={draftStore(live, id, spec.field)}
          keep={(value) => void live.write(kind, id, { [spec.field]: value })}
          keepUnit={(unit) => rememberUnit(live, spec.field, unit)}
        />
      ))}
    </>
  );
}

interface EntryProps {
  readonly spec: FieldSpec;
  readonly value: unknown;
  readonly decimalSign: string;
  readonly firstUnit: string;
  readonly store: DraftStore;
  readonly keep: (value: Kept) => void;
  readonly keepUnit: (unit: string) => void;
}

function Entry({ spec, value, decimalSign, firstUnit, store, keep, keepUnit }: EntryProps): ReactNode {
  const shared = { label: spec.label, onChange: keep };
  switch (spec.kind) {
    case "text":
      return <TextField {...shared} value={asText(value)} required={spec.required ?? false} store={store} />;
    case "date":
      return <DateField {...shared} value={asText(value)} toCome={spec.toCome ?? false} store={store} />;
    case "time":
      return <TimeField {...shared} value={asText(value)} />;
    case "number":
      return (
        <NumberEntry
          {...shared}
          spec={spec}
          value={typeof value === "number" ? value : undefined}
          firstUnit={firstUnit}
          decimalSign={decimalSign}
          store={store}
          onUnit={keepUnit}
        />
      );
    case "choice":
      return (
        <ChoiceField
          {...shared}
          value={asText(value)}
          choices={spec.choices}
          ask={spec.ask}
          otherwise={spec.otherwise}
        />
      );
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
    case "yesNo":
      return (
        <ChoiceField
          label={spec.label}
          value={value === true ? "yes" : value === false ? "no" : ""}
          choices={YES_NO}
          ask={spec.ask}
          onChange={(text) => keep(text === null ? null : text === "yes")}
        />
      );
    case "set":
      return <SetField {...shared} value={asSet(value)} choices={spec.choices} />;
  }
}

const YES_NO = Object.entries(setupWords.yesNo);

const asText = (value: unknown) => (typeof value === "string" ? value : "");
const asSet = (value: unknown): readonly string[] => (Array.isArray(value) ? (value as string[]) : []);
