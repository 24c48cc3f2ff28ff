import { readCsv } from "@tapside/book";
import { known, type Outcome, refused } from "@tapside/quantities";

export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly Readonly<Record<string, string>>[];
  /** Of each row, the line it begins on: the header is 1, empty lines count. */
  readonly rowNumbers: readonly number[];
}

/**
 * Reads a table with a header row: commas, semicolons or tabs between cells, quotes as in RFC 4180.
 * Refused: "empty-table", "column-twice", "unclosed-quote", "row-too-long".
 */
export function readTable(text: string): Outcome<Table> {
  const lines = readCsv(text).map(({ line, cells, unclosed }) => ({
    row: line,
    cells: withoutBlankEnd(cells),
    unclosed,
  }));
  const open = lines.find(({ unclosed }) => unclosed);
  if (open) return refused("unclosed-quote", { row: open.row });
  const [first, ...body] = lines;
  if (!first || body.length === 0) return refused("empty-table");
  const columns = first.cells.map((name) => name.trim());
  const twice = columns.find((name, i) => columns.indexOf(name) !== i);
  if (twice !== undefined) return refused("column-twice", { column: twice });
  const long = body.find(({ cells }) => cells.length > columns.length);
  if (long) return refused("row-too-long", { row: long.row });
  return known({
    columns,
    rows: body.map(({ cells }) =>
      Object.fromEntries(columns.map((name, i) => [name, (cells[i] ?? "").trim()])),
    ),
    rowNumbers: body.map(({ row }) => row),
  });
}

/** Spreadsheets pad every line to the widest one. */
const withoutBlankEnd = (line: readonly string[]) =>
  line.slice(0, line.findLastIndex((cell) => cell.trim() !== "") + 1);

/** Writes a table as comma-separated text, quoting only where needed. */
export function writeTable(
  columns: readonly string[],
  rows: readonly Readonly<Record<string, string | number>>[],
): string {
  const line = (values: readonly (string | number)[]) => values.map(quoted).join(",");
  return `${[line(columns), ...rows.map((row) => line(columns.map((name) => row[name] ?? "")))].join("\n")}\n`;
}

function quoted(value: string | number): string {
  const text = typeof value === "number" ? String(Number(value.toPrecision(8))) : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
