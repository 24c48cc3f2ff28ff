import type { Outcome } from "@tapside/quantities";

/** A verb that takes one case a row of a table and adds the columns it computes. */
export interface RowVerb {
  readonly summary: string;
  /** Output columns, in order. */
  readonly columns: readonly string[];
  readonly row: (
    input: Readonly<Record<string, string>>,
  ) => Outcome<Readonly<Record<string, string | number>>>;
}
