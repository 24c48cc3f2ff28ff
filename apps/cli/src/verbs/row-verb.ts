import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
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

/** Figures of an absurd size can leave what no number holds: that is no answer. */
function numbersOnly(cells: Cells): Outcome<Cells> {
  const lost = Object.entries(cells).find(([, cell]) => typeof cell === "number" && !Number.isFinite(cell));
  return lost ? refused("no-number", { name: lost[0] }) : known(cells);
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
  row: (input) => mapOutcome(mapOutcome(reads.read(input), answer), numbersOnly),
});
