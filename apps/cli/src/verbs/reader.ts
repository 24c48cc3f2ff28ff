import {
  allKnown,
  known,
  mapOutcome,
  missing,
  type Outcome,
  parseReading,
  refused,
} from "@tapside/quantities";

/** A row of a table: its cells by column. */
export type Row = Readonly<Record<string, string>>;

/** What is read of a row: the columns that must hold something, those that may be blank, and what they mean together. */
export interface Reader<T> {
  readonly needs: readonly string[];
  readonly may: readonly string[];
  readonly read: (row: Row) => Outcome<T>;
}

/** A cell without the spaces around it; blank when the table has no such column. */
export const textIn = (row: Row, column: string): string => (row[column] ?? "").trim();

const AS_PROGRAMS_WRITE = /^[-+.\d]+(e[-+]?\d+)?$/i;

/** As a program writes it (1e-5), else as the field does (7,5). */
function numberOf(column: string, text: string): Outcome<number> {
  const written = AS_PROGRAMS_WRITE.test(text) ? Number(text) : Number.NaN;
  if (Number.isFinite(written)) return known(written);
  const typed = parseReading(text);
  return typed.kind === "known" ? known(typed.value.value) : refused("not-a-number", { name: column, text });
}

function oneCell<T>(
  column: string,
  meaning: (text: string) => Outcome<T>,
  blank: Outcome<T> = missing(column),
): Reader<T> {
  return {
    needs: blank.kind === "missing" ? [column] : [],
    may: blank.kind === "missing" ? [] : [column],
    read: (row) => {
      const text = textIn(row, column);
      return text === "" ? blank : meaning(text);
    },
  };
}

const numberThat =
  (fits: (value: number) => boolean, code: string) =>
  (column: string, otherwise?: number): Reader<number> =>
    oneCell(
      column,
      (text) =>
        mapOutcome(numberOf(column, text), (value) =>
          fits(value) ? known(value) : refused(code, { name: column, value }),
        ),
      otherwise === undefined ? undefined : known(otherwise),
    );

/** A number; `otherwise` stands in for a blank cell. */
export const number = numberThat(Number.isFinite, "not-a-finite-number");
export const positive = numberThat((value) => value > 0, "not-positive");
export const notNegative = numberThat((value) => value >= 0, "below-zero");
/** A part of a whole, short of all of it. */
export const share = numberThat((value) => value >= 0 && value < 1, "not-a-share");
/** How many: a whole number from 0. */
export const count = numberThat((value) => Number.isInteger(value) && value >= 0, "not-a-count");

/** A number where there is one. */
export const optional = (column: string): Reader<number | undefined> =>
  oneCell<number | undefined>(column, (text) => numberOf(column, text), known(undefined));

/** A number from 0 where there is one. */
export const optionalNotNegative = (column: string): Reader<number | undefined> =>
  mapReader(optional(column), (value) =>
    value !== undefined && value < 0 ? refused("below-zero", { name: column, value }) : known(value),
  );

/** A number above 0 where there is one. */
export const optionalPositive = (column: string): Reader<number | undefined> =>
  mapReader(optional(column), (value) =>
    value !== undefined && !(value > 0) ? refused("not-positive", { name: column, value }) : known(value),
  );

/** Whatever stands in a cell. */
export const text = (column: string): Reader<string> => oneCell(column, known, known(""));

/** One of some words; `otherwise` stands in for a blank cell. */
export const word = <const W extends string>(column: string, words: readonly W[], otherwise?: W): Reader<W> =>
  oneCell(
    column,
    (given) => {
      const found = words.find((one) => one.toLowerCase() === given.toLowerCase());
      return found === undefined
        ? refused("word-unknown", { name: column, text: given, words: words.join(", ") })
        : known(found);
    },
    otherwise === undefined ? undefined : known(otherwise),
  );

const distinct = (columns: readonly string[]) => [...new Set(columns)];

/** Several readings of one row. */
export function all<T extends Readonly<Record<string, unknown>>>(
  readers: {
    readonly [K in keyof T]: Reader<T[K]>;
  },
): Reader<T> {
  const list: readonly Reader<unknown>[] = Object.values(readers);
  const needs = distinct(list.flatMap((one) => one.needs));
  return {
    needs,
    may: distinct(list.flatMap((one) => one.may)).filter((column) => !needs.includes(column)),
    read: (row) =>
      allKnown<T>(
        Object.fromEntries(
          Object.entries<Reader<unknown>>(readers).map(([name, one]) => [name, one.read(row)]),
        ) as { readonly [K in keyof T]: Outcome<T[K]> },
      ),
  };
}

/** What is read, made into something else. */
export const mapReader = <A, B>(reader: Reader<A>, make: (read: A) => Outcome<B>): Reader<B> => ({
  ...reader,
  read: (row) => mapOutcome(reader.read(row), make),
});
