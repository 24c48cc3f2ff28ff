import { type Outcome, refused } from "@tapside/quantities";
import { type CommandVerb, complain } from "../command-verb.ts";
import { readTable, type Table, writeTable } from "../csv.ts";
import { sentence } from "../sentence.ts";

/** One answer of several rows together. */
export interface GroupAnswer {
  /** What a refusal calls it. */
  readonly name: string;
  readonly outcome: Outcome<Readonly<Record<string, string | number>>>;
}

/** A row that the answers do without, and why. */
interface RowBeside {
  readonly row: number;
  readonly code: string;
  readonly detail?: Readonly<Record<string, string | number>>;
}

/** A verb whose rows answer together, such as all appliances of a site. */
export interface GroupVerb {
  readonly columns: readonly string[];
  readonly groups: (table: Table) => readonly GroupAnswer[];
  readonly beside?: (table: Table) => readonly RowBeside[];
}

/** Runs a group verb: a table in, a row an answer out, refused groups listed. */
export const runGroups =
  (name: string, verb: GroupVerb): CommandVerb["run"] =>
  ({ plain, named }, io) => {
    const [input] = plain;
    if (!input) return complain(io, `Name a table: tapside ${name} IN.csv -o OUT.csv`);
    const table = readTable(io.readText(input));
    if (table.kind !== "known") return complain(io, `${input}: ${sentence(table)}`);
    const answers = verb.groups(table.value);
    const rows = answers.flatMap(({ outcome }) => (outcome.kind === "known" ? [outcome.value] : []));
    const text = writeTable(verb.columns, rows);
    if (named["-o"]) io.writeText(named["-o"], text);
    if (named["--json"]) io.print(JSON.stringify({ rows }));
    else if (!named["-o"]) io.print(text.trimEnd());
    for (const { row, code, detail } of verb.beside?.(table.value) ?? [])
      io.complain(`row ${row} not read: ${sentence(refused(code, detail))}`);
    for (const one of answers)
      if (one.outcome.kind !== "known") io.complain(`${one.name} refused: ${sentence(one.outcome)}`);
    return rows.length === 0 || rows.length < answers.length ? 1 : 0;
  };
