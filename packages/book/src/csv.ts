const LINE_END = /\r\n?|\n/g;

/** One line of a table with the number of the line it begins on. */
export interface CsvLine {
  readonly line: number;
  readonly cells: readonly string[];
  /** A quote was opened and never closed: the rest of the file lies in this cell. */
  readonly unclosed: boolean;
}

/**
 * Every line of a table as it comes from an office: comma, semicolon or tab between cells, whichever the first line holds
 * most of; quotes as in RFC 4180. Nothing is refused here; empty lines are left out.
 */
export function readCsv(text: string): readonly CsvLine[] {
  const body = text.replace(/^\uFEFF/, "");
  const separator = separatorOf(body);
  const lines: CsvLine[] = [];
  let at = 0;
  let number = 1;
  while (at < body.length) {
    const read = readLine(body, at, separator);
    if (read.cells.some((cell) => cell.trim() !== ""))
      lines.push({ line: number, cells: read.cells, unclosed: read.unclosed });
    number += body.slice(at, read.next).match(LINE_END)?.length ?? 0;
    at = read.next;
  }
  return lines;
}

function separatorOf(text: string): string {
  const head = text.split(LINE_END, 1)[0] ?? "";
  const count = (sign: string) => head.split(sign).length;
  return [",", ";", "\t"].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}

/** Cells up to the end of the line; a quoted cell may hold separators, line ends and doubled quotes. */
function readLine(text: string, start: number, separator: string) {
  const cells: string[] = [];
  let at = start;
  for (;;) {
    const quoted = text[at] === '"';
    const end = quoted ? endOfQuoted(text, at) : endOfPlain(text, at, separator);
    if (end < 0) return { cells: [...cells, text.slice(at + 1)], next: text.length, unclosed: true };
    const tail = quoted ? endOfPlain(text, end, separator) : end;
    cells.push(quoted ? text.slice(at + 1, end - 1).replaceAll('""', '"') : text.slice(at, end));
    if (text[tail] === separator) at = tail + 1;
    else return { cells, next: lineAfter(text, tail), unclosed: false };
  }
}

function endOfPlain(text: string, start: number, separator: string): number {
  let at = start;
  while (at < text.length && text[at] !== separator && text[at] !== "\n" && text[at] !== "\r") at++;
  return at;
}

/** Just behind the closing quote, or -1. */
function endOfQuoted(text: string, start: number): number {
  for (let at = start + 1; at < text.length; at++) {
    if (text[at] !== '"') continue;
    if (text[at + 1] !== '"') return at + 1;
    at++;
  }
  return -1;
}

const lineAfter = (text: string, at: number): number =>
  text[at] === "\r" && text[at + 1] === "\n" ? at + 2 : Math.min(at + 1, text.length);

/** Text of a file: UTF-8, else as western office programs write it (windows-1252). */
export function decodeText(bytes: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** Comma-separated text with CRLF line ends, quotes where needed. Source: RFC 4180, section 2. */
export function writeCsv(
  columns: readonly string[],
  rows: readonly Readonly<Record<string, string | number | undefined>>[],
): string {
  const lines = [columns, ...rows.map((row) => columns.map((name) => row[name]))];
  return `${lines.map((line) => line.map(quoted).join(",")).join("\r\n")}\r\n`;
}

function quoted(value: string | number | undefined): string {
  const text = String(value ?? "");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
