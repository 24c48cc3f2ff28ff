import { known, type Outcome, parseReading, refused } from "@tapside/quantities";
import { checkText, type SensorLine, type SensorLog } from "@tapside/records";
import { type CsvLine, readCsv } from "./csv.ts";
import type { RefusedRow } from "./list-preview.ts";

/** A sensor's file read and checked, nothing written yet. */
export interface SensorPreview {
  readonly lines: readonly SensorLine[];
  readonly refused: readonly RefusedRow[];
  readonly unknownColumns: readonly string[];
}

const COLUMNS: readonly string[] = ["time", "value", "unit", "alarm"];
/** Kept as one record: a longer file is not a log of readings but a recording. */
const MOST_LINES = 20_000;

/**
 * Readings and alarms of a sensor: columns time, value, unit, alarm; of value and alarm one must be there. A time without a zone is
 * taken to be in UTC plus `offsetMinutes`. A bad row does not stop the good ones; the same time twice is refused the second time.
 * Refused as a whole: "list-empty", "list-column-missing", "list-column-twice", "list-too-long".
 */
export function readSensor(csv: string, offsetMinutes = 0): Outcome<SensorPreview> {
  const [head, ...body] = readCsv(csv);
  if (!head || head.unclosed) return refused("list-empty");
  const columns = head.cells.map((cell) => cell.trim().toLowerCase());
  const twice = columns.find((name, i) => name !== "" && columns.indexOf(name) !== i);
  if (twice !== undefined) return refused("list-column-twice", { column: twice });
  if (!columns.includes("time")) return refused("list-column-missing", { column: "time" });
  if (body.length > MOST_LINES) return refused("list-too-long", { lines: body.length, most: MOST_LINES });
  const seen = new Map<string, number>();
  const read = body.map((line) => rowOf(line, columns, offsetMinutes, seen));
  return known({
    lines: read.flatMap((one) => ("code" in one ? [] : [one])).sort((a, b) => (a.at < b.at ? -1 : 1)),
    refused: read.flatMap((one) => ("code" in one ? [one] : [])),
    unknownColumns: columns.filter((name) => name !== "" && !COLUMNS.includes(name)),
  });
}

function rowOf(
  line: CsvLine,
  columns: readonly string[],
  offset: number,
  seen: Map<string, number>,
): SensorLine | RefusedRow {
  const no = (code: string, detail: RefusedRow["detail"] = {}): RefusedRow => ({
    line: line.line,
    code,
    detail,
  });
  if (line.unclosed) return no("row-unclosed-quote");
  const cell = (name: string) => (line.cells[columns.indexOf(name)] ?? "").trim();
  const [time, text, unit, alarm] = COLUMNS.map((name) => (columns.includes(name) ? cell(name) : ""));
  const at = instantOf(time!, offset);
  if (at === undefined) return no("row-no-such-time", { column: "time", text: time!.slice(0, 40) });
  if ([unit!, alarm!].some((one) => checkText(one).kind !== "known"))
    return no("row-unkeepable-text", { column: "alarm" });
  const value = text === "" ? undefined : parseReading(text!);
  if (value && value.kind !== "known")
    return no("row-not-a-number", { column: "value", text: text!.slice(0, 40) });
  if (!value && !alarm) return no("row-says-nothing");
  const key = `${at} ${unit} ${alarm}`;
  const before = seen.get(key);
  if (before !== undefined) return no("row-twice", { column: "time", text: time!, line: before });
  seen.set(key, line.line);
  return { at, ...(value && { value: value.value.value }), ...(unit && { unit }), ...(alarm && { alarm }) };
}

const WRITTEN = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}:\d{2})(:\d{2})?(?:\.\d+)?(Z|[+-]\d{2}:?\d{2})?$/;

/** "2026-11-25 08:00", with seconds and zone where they are written; undefined for a time that is none. */
function instantOf(text: string, offsetMinutes: number): string | undefined {
  const [, day, minute, second = ":00", zone] = WRITTEN.exec(text) ?? [];
  if (!day) return undefined;
  const utc = Date.parse(`${day}T${minute}${second}Z`);
  if (Number.isNaN(utc) || new Date(utc).toISOString().slice(0, 10) !== day) return undefined;
  const shift = zone === undefined ? offsetMinutes : zone === "Z" ? 0 : minutesOf(zone);
  return new Date(utc - shift * 60_000).toISOString();
}

const minutesOf = (zone: string): number =>
  (zone[0] === "-" ? -1 : 1) * (60 * Number(zone.slice(1, 3)) + Number(zone.slice(-2)));

/** What one log says in a line: its span, its lowest and highest value of each unit, how many alarms. */
export function sensorSummary({ lines = [] }: Pick<Partial<SensorLog>, "lines">) {
  const units = [...new Set(lines.flatMap((one) => (one.value === undefined ? [] : [one.unit ?? ""])))];
  const spans = units.map((unit) => {
    const values = lines.flatMap((one) =>
      (one.unit ?? "") === unit && one.value !== undefined ? [one.value] : [],
    );
    const [low, high] = values.reduce(
      ([a, b], one) => [Math.min(a, one), Math.max(b, one)],
      [Infinity, -Infinity],
    );
    return { unit, low, high };
  });
  return {
    from: lines[0]?.at.slice(0, 10) ?? "",
    until: lines.at(-1)?.at.slice(0, 10) ?? "",
    count: lines.length,
    alarms: lines.filter((one) => one.alarm).length,
    spans,
  };
}
