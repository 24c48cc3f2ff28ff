import type { Arguments } from "../arguments.ts";
import { type CliIo, type CommandVerb, complain, type Example } from "../command-verb.ts";
import { readTable, type Table, writeTable } from "../csv.ts";
import { columnMistaken, sentence } from "../sentence.ts";
import { mistakenColumns } from "./mistaken-columns.ts";
import type { RowVerb } from "./row-verb.ts";

/** A row verb as a command: one case a row in, the same rows with the computed columns out, refused rows listed. */
export function rowCommand(name: string, verb: RowVerb, examples: readonly Example[]): CommandVerb {
  return {
    summary: verb.summary,
    ways: ["IN.csv [-o OUT.csv] [--json]"],
    notes: notesOn(verb),
    examples,
    run: (args, io) => runRows(name, verb, args, io),
  };
}

const notesOn = ({ needs, may, columns }: RowVerb) => [
  ...(needs.length > 0 ? [`reads: ${needs.join(", ")}`] : []),
  ...(may.length > 0 ? [`where given: ${may.join(", ")}`] : []),
  `writes the columns of IN.csv that it does not compute, then: ${columns.join(", ")}`,
];

function runRows(name: string, verb: RowVerb, { plain, named }: Arguments, io: CliIo): number {
  const [input] = plain;
  if (!input) return complain(io, `Name a table: tapside ${name} IN.csv -o OUT.csv`);
  const table = readTable(io.readText(input));
  if (table.kind !== "known") return complain(io, `${input}: ${sentence(table)}`);
  const done = table.value.rows.map((row, i) => ({
    row: table.value.rowNumbers[i]!,
    input: row,
    outcome: verb.row(row),
  }));
  const refusedRows = done.flatMap(({ row, outcome }) =>
    outcome.kind === "known" ? [] : [{ row, reason: sentence(outcome) }],
  );
  const answered = done.flatMap(({ input: given, outcome }) =>
    outcome.kind === "known" ? [{ ...given, ...outcome.value }] : [],
  );
  const text = writeTable(outputColumns(table.value, verb), answered);
  if (named["-o"]) io.writeText(named["-o"], text);
  if (named["--json"]) io.print(JSON.stringify({ rows: answered, refused: refusedRows }));
  else if (!named["-o"]) io.print(text.trimEnd());
  for (const [written, meant] of mistakenColumns(table.value.columns, [...verb.needs, ...verb.may]))
    io.complain(columnMistaken(written, meant));
  for (const { row, reason } of refusedRows) io.complain(`row ${row} refused: ${reason}`);
  return refusedRows.length > 0 ? 1 : 0;
}

const outputColumns = (table: Table, verb: RowVerb) => [
  ...table.columns.filter((column) => !verb.columns.includes(column)),
  ...verb.columns,
];
