import type { KindId } from "@tapside/records";
import type { ReactNode } from "react";
import type { LiveBook } from "../store/open-book.ts";
import { useBook } from "../store/use-book.ts";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { setupWords } from "../words/setup.ts";
import { ChoiceField, type Choices } from "./fields/choice-field.tsx";
import { DateField } from "./fields/date-field.tsx";
import { SetField } from "./fields/set-field.tsx";
import { TextField } from "./fields/text-field.tsx";
import { TimeField } from "./fields/time-field.tsx";
import { NumberEntry, shownIn } from "./number-entry.tsx";
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
    | {
        readonly kind: "number";
        readonly baseUnit: string;
        readonly units: readonly string[];
        readonly range?: readonly [number, number];
        /** What holds while it is blank, in the base unit. */
        readonly otherwise?: number;
      }
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
          firstUnit={firstUnit(live, spec, live.field(id, spec.field), settings?.pressureUnit)}
          store={draftStore(live, id, spec.field)}
          keep={(value) => void live.write(kind, id, { [spec.field]: value })}
          keepUnit={(unit) => rememberUnit(live, spec.field, unit)}
        />
      ))}
    </>
  );
}

/** What was typed and refused waits beside its record, outside of undo and of what is sent. */
const draftStore = (live: LiveBook, record: string, field: string): DraftStore => ({
  load: () => {
    const raw = live.field(`draft:${record}`, field);
    return typeof raw === "string" ? raw : undefined;
  },
  keep: (raw) => void keepDraft(live, record, field, raw),
});

/** Text that no book could keep is not kept as a draft either; it stands on the screen with the reason. */
const keepDraft = (live: LiveBook, record: string, field: string, raw: string | null) =>
  live.write("draft", `draft:${record}`, { [field]: raw }, { undoable: false }).catch(() => undefined);

const PREFERENCES = "preferences";

const rememberUnit = (live: LiveBook, field: string, unit: string) =>
  void live.write("draft", PREFERENCES, { [`unit:${field}`]: unit }, { undoable: false });

/** The unit last used for this entry, else the pressure unit of the settings, else the one its number is shortest in: most likely that of the plate. */
function firstUnit(
  live: LiveBook,
  spec: FieldSpec,
  value: unknown,
  pressureUnit: string | undefined,
): string {
  if (spec.kind !== "number") return "";
  const asked = [live.field(PREFERENCES, `unit:${spec.field}`), pressureUnit];
  const wanted = asked.find((unit) => spec.units.includes(String(unit)));
  if (wanted !== undefined) return String(wanted);
  const kept = typeof value === "number" ? value : undefined;
  const digits = (unit: string) => shownIn(kept, spec.baseUnit, unit).length;
  return [...spec.units].sort((a, b) => digits(a) - digits(b))[0] ?? spec.baseUnit;
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
