import { convert, known, type Outcome, parseReading } from "@tapside/quantities";
import { sayWhyNot } from "../words/say-why-not.ts";
import { setupWords as words } from "../words/setup.ts";

/** What a number of the set-up is kept and typed in, and what it can be. */
export interface NumberSpec {
  readonly baseUnit: string;
  /** Units offered. */
  readonly units: readonly string[];
  readonly range?: readonly [low: number, high: number];
  /** What holds while it is blank, in the base unit. */
  readonly otherwise?: number;
}

type Taken =
  | { readonly kind: "value"; readonly value: number | undefined }
  | { readonly kind: "refusal"; readonly text: string };

/** The typed text in the base unit; blank is a fair answer. */
export function readNumber(raw: string, unit: string, { baseUnit, range }: NumberSpec): Taken {
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
