import { mapOutcome, type Outcome } from "@tapside/quantities";
import type { Reader, Row } from "./reader.ts";

export type Cells = Readonly<Record<string, string | number>>;

/** A verb that takes one case a row of a table and adds the columns it computes. */
export interface RowVerb {
  readonly summary: string;
  /** Columns that must hold something, and those that may be blank. */
  readonly needs: readonly string[];
  readonly may: readonly string[];
  /** Output columns, in order. */
  readonly columns: readonly string[];
  readonly row: (input: Row) => Outcome<Cells>;
}

/** A row verb from what it reads and what it answers to that. */
export const rowVerb = <T>({
  reads,
  answer,
  ...rest
}: Pick<RowVerb, "summary" | "columns"> & {
  readonly reads: Reader<T>;
  readonly answer: (read: T) => Outcome<Cells>;
}): RowVerb => ({
  ...rest,
  needs: reads.needs,
  may: reads.may,
  row: (input) => mapOutcome(reads.read(input), answer),
});
