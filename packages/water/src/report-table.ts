import { known, type Outcome, refused } from "@tapside/quantities";
import { type ReportedId, reportedAmount, reportedId } from "./reported-amount.ts";
import { type ReportLine, readReport } from "./reported-water.ts";

/** A table with a head line, its cells as text; row numbers as a spreadsheet counts them. */
export interface ReportTable {
  readonly columns: readonly string[];
  readonly rows: readonly Readonly<Record<string, string>>[];
  readonly rowNumbers: readonly number[];
}

/** A row that cannot be taken, with the reason. */
export interface RefusedReportRow {
  readonly row: number;
  readonly code: string;
  readonly detail: Readonly<Record<string, string | number>>;
}

/** One bottle, or one yearly report: where and when it was taken, what it holds, and which of its rows cannot be taken. */
export interface ReportInTable {
  readonly bottle: string;
  readonly place: string;
  /** ISO date where the table has one. */
  readonly sampledOn?: string;
  readonly row: number;
  readonly lines: readonly ReportLine[];
  readonly refused: readonly RefusedReportRow[];
}

const HEADS = {
  name: ["quantity", "parameter", "analyte", "substance", "constituent", "name"],
  mean: ["mean", "average", "value", "result", "typical"],
  low: ["low", "min", "minimum", "lowest", "from"],
  high: ["high", "max", "maximum", "highest", "to"],
  unit: ["unit", "units"],
  bottle: ["bottle", "bottle_code", "sample", "sample_id", "code", "id"],
  place: ["place", "sampling_place", "location", "sampling_point", "site"],
  sampledOn: ["date", "sampled_on", "taken_on", "sampled"],
} as const;

type Head = keyof typeof HEADS;
type Cells = Readonly<Record<string, string>>;
type Get = (row: Cells, head: Head) => string;

const headOf = (columns: readonly string[], head: Head) =>
  columns.find((column) => (HEADS[head] as readonly string[]).includes(column.trim().toLowerCase()));

/**
 * The reports of a table. Long tables have a line a figure (quantity, mean, low, high, unit); wide ones a column a figure
 * with its unit in the name (`Ca_mg`, `EC25_uScm`) and a report a line. A row that cannot be taken does not stop the others.
 */
export function reportsOfTable({ columns, rows, rowNumbers }: ReportTable): readonly ReportInTable[] {
  const at = Object.fromEntries(Object.keys(HEADS).map((head) => [head, headOf(columns, head as Head)]));
  const get: Get = (row, head) => (row[at[head] ?? ""] ?? "").trim();
  const numbered = rows.map((row, i) => ({ row, number: rowNumbers[i]! }));
  const groups = new Map<string, Group>();
  for (const { row, number } of numbered) {
    const key =
      at.name === undefined ? String(number) : JSON.stringify([get(row, "bottle"), get(row, "place")]);
    const group = groups.get(key) ?? { head: row, number, given: [] };
    group.given.push(
      ...(at.name === undefined ? wideLines(columns, row, number) : [longLine(row, get, number)]),
    );
    groups.set(key, group);
  }
  return [...groups.values()].map((group) => reportOf(group, get));
}

interface Group {
  readonly head: Cells;
  readonly number: number;
  readonly given: Given[];
}

/** What a row, or a cell of a wide one, gives: a line, or why not. */
interface Given {
  readonly number: number;
  readonly line: Outcome<ReportLine>;
}

function reportOf({ head, number, given }: Group, get: Get): ReportInTable {
  const lines: ReportLine[] = [];
  const bad: RefusedReportRow[] = [];
  for (const one of given) {
    const line = checked(one.line, lines);
    if (line.kind === "known") lines.push(line.value);
    else if (line.kind === "refused")
      bad.push({ row: one.number, code: line.code, detail: line.detail ?? {} });
  }
  const sampledOn = /^\d{4}-\d{2}-\d{2}$/.exec(get(head, "sampledOn"))?.[0];
  return {
    bottle: get(head, "bottle"),
    place: get(head, "place"),
    ...(sampledOn && { sampledOn }),
    row: number,
    lines,
    refused: bad,
  };
}

/** A line that says something known, once, in a unit of it. */
function checked(line: Outcome<ReportLine>, before: readonly ReportLine[]): Outcome<ReportLine> {
  if (line.kind !== "known") return line;
  const { name } = line.value;
  const id = reportedId(name);
  if (!id) return refused("report-quantity-unknown", { quantity: name });
  if (before.some((one) => reportedId(one.name) === id))
    return refused("report-figure-twice", { quantity: name });
  const read = readReport([line.value]);
  return read.kind === "known" ? line : read;
}

const NOTHING = /^(-|–|nd|n\/d|not detected)?$/i;

function numberOf(text: string, name: string): Outcome<number> {
  const below = /^<\s*/.test(text);
  const value = Number(text.replace(/^<\s*/, "").replace(",", "."));
  if (!Number.isFinite(value)) return refused("not-a-number", { name, text });
  return known(below ? value / 2 : value);
}

function longLine(row: Cells, get: Get, number: number): Given {
  const [name, unit] = [get(row, "name"), get(row, "unit")];
  const figures: Record<string, number> = {};
  for (const head of ["mean", "low", "high"] as const) {
    const text = get(row, head);
    if (NOTHING.test(text)) continue;
    const value = numberOf(text, name);
    if (value.kind !== "known") return { number, line: value };
    figures[head] = value.value;
  }
  const empty = Object.keys(figures).length === 0;
  return {
    number,
    line: empty ? refused("report-figure-missing", { quantity: name }) : known({ name, unit, ...figures }),
  };
}

const COLUMN_UNITS: readonly (readonly [RegExp, string])[] = [
  [/_CaCO3_mg$/i, "mg/L as CaCO3"],
  [/_mg$/i, "mg/L"],
  [/_uScm$/i, "µS/cm"],
  [/_C$/i, "°C"],
];

const wideLines = (columns: readonly string[], row: Cells, number: number): Given[] =>
  columns
    .filter((column) => reportedId(column) !== undefined && !NOTHING.test((row[column] ?? "").trim()))
    .map((column) => {
      const mean = numberOf((row[column] ?? "").trim(), column);
      const unit = COLUMN_UNITS.find(([pattern]) => pattern.test(column))?.[1] ?? "";
      return { number, line: mean.kind === "known" ? known({ name: column, unit, mean: mean.value }) : mean };
    });

const OWN_UNIT: Readonly<Partial<Record<ReportedId, string>>> = {
  Alk: "mg/L as CaCO3",
  hardness: "mg/L as CaCO3",
  pH: "",
  temperatureC: "°C",
  ec25: "µS/cm",
};

/** A line by our own name for its quantity: its unit as printed, unless the printed name said more than the unit. */
export function plainLine(line: ReportLine): Outcome<ReportLine & { readonly id: ReportedId }> {
  const id = reportedId(line.name);
  if (!id) return refused("report-quantity-unknown", { quantity: line.name });
  const factor = (name: string, value: number) => reportedAmount(id, value, line.unit, name);
  const [named, plain] = [factor(line.name, 1), factor(id, 1)];
  if (named.kind !== "known") return named;
  if (plain.kind === "known" && plain.value === named.value && line.unit !== "")
    return known({ ...line, id, name: id });
  const figures = (["mean", "low", "high"] as const).flatMap((end) => {
    const value = line[end] === undefined ? undefined : factor(line.name, line[end]);
    return value?.kind === "known" ? [[end, Number(value.value.toPrecision(6))] as const] : [];
  });
  return known({ id, name: id, unit: OWN_UNIT[id] ?? "mg/L", ...Object.fromEntries(figures) });
}
