import { known, type Outcome, refused } from "@tapside/quantities";

export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly Readonly<Record<string, string>>[];
  /** Of each row, as a spreadsheet counts: the header is 1, empty rows count. */
  readonly rowNumbers: readonly number[];
}

/**
 * Reads comma-separated text with a header row; quotes as in RFC 4180.
 * Refused: "empty-table", "not-commas", "column-twice", "unclosed-quote", "row-too-long".
 */
export function readTable(text: string): Outcome<Table> {
  const lines = cells(text.replace(/^\uFEFF/, ""));
  if (lines.kind !== "known") return lines;
  const numbered = lines.value
    .map((line, i) => ({ line, rowNumber: i + 1 }))
    .filter(({ line }) => line.some((cell) => cell.trim() !== ""));
  const [first, ...body] = numbered;
  if (!first) return refused("empty-table");
  const header = withoutBlankEnd(first.line);
  if (header.length === 1 && /[;\t]/.test(header[0]!)) return refused("not-commas");
  const columns = header.map((name) => name.trim());
  const twice = columns.find((name, i) => columns.indexOf(name) !== i);
  if (twice !== undefined) return refused("column-twice", { column: twice });
  const long = body.find(({ line }) => withoutBlankEnd(line).length > columns.length);
  if (long) return refused("row-too-long", { row: long.rowNumber });
  return known({
    columns,
    rows: body.map(({ line }) =>
      Object.fromEntries(columns.map((name, i) => [name, (line[i] ?? "").trim()])),
    ),
    rowNumbers: body.map(({ rowNumber }) => rowNumber),
  });
}

/** Spreadsheets pad every line with commas to the widest one. */
const withoutBlankEnd = (line: readonly string[]) =>
  line.slice(0, line.findLastIndex((cell) => cell.trim() !== "") + 1);

/** Every cell of every line; a quoted cell may hold commas, line ends and doubled quotes. */
function cells(text: string): Outcome<string[][]> {
  const lines: string[][] = [[]];
  const pattern = /("(?:[^"]|"")*"|[^,\r\n"]*)(,|\r\n?|\n|$)/y;
  while (pattern.lastIndex < text.length) {
    const match = pattern.exec(text);
    if (!match) return refused("unclosed-quote", { row: lines.length });
    const [, cell = "", end] = match;
    lines.at(-1)!.push(cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell);
    if (end !== "," && end !== "") lines.push([]);
    if (end === "," && pattern.lastIndex === text.length) lines.at(-1)!.push("");
  }
  return known(lines);
}

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
