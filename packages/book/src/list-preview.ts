import { known, type Outcome, parseReading, refused } from "@tapside/quantities";
import { checkText } from "@tapside/records";
import { LINE_RANGES, RESTRICTOR_RANGES } from "@tapside/reverse-osmosis";
import { type CsvLine, readCsv } from "./csv.ts";

type Kind = "text" | "number" | "day" | "yesNo" | "oneOf";

interface Column {
  readonly kind: Kind;
  readonly range?: readonly [number, number];
  readonly words?: readonly string[];
}

const text: Column = { kind: "text" };
const day: Column = { kind: "day" };
const number = (low: number, high: number): Column => ({ kind: "number", range: [low, high] });

const oneOf = (...words: readonly string[]): Column => ({ kind: "oneOf", words });
const line: readonly [Column, Column] = [number(...LINE_RANGES.lengthM), number(...LINE_RANGES.boreMm)];

/** Columns of a list of sites and units. Only "site" must be there; what is not there stays blank. */
export const LIST_COLUMNS = {
  site: text,
  site_code: text,
  chain: text,
  owner: text,
  address: text,
  altitude_m: number(-430, 5200),
  water_source: text,
  ask_name: text,
  ask_role: text,
  ask_phone: text,
  key: text,
  hours: text,
  place: text,
  where: text,
  isolation_valve: text,
  drain: text,
  bypass: { kind: "yesNo" },
  unit: text,
  serial: text,
  sticker: text,
  fitted_on: day,
  permeate_L_h: number(0.1, 1000),
  drain_L_h: number(0.1, 3000),
  recovery_percent: number(1, 95),
  rejection_percent: number(20, 99.99),
  test_pressure_kPa: number(50, 3000),
  test_temperature_C: number(1, 60),
  test_feed_mg_L: number(10, 10000),
  tank_L: number(0.5, 1000),
  restrictor_kind: oneOf("rated", "capillary", "orifice", "measured"),
  restrictor_L_h: number(...RESTRICTOR_RANGES.restrictorLPerH),
  restrictor_at_kPa: number(...RESTRICTOR_RANGES.restrictorAtKPaGauge),
  restrictor_law: oneOf("orifice", "laminar"),
  restrictor_at_C: number(...RESTRICTOR_RANGES.restrictorAtC),
  restrictor_bore_mm: number(...RESTRICTOR_RANGES.restrictorBoreMm),
  restrictor_length_m: number(...RESTRICTOR_RANGES.restrictorLengthM),
  feed_tube_length_m: line[0],
  feed_tube_bore_mm: line[1],
  permeate_tube_length_m: line[0],
  permeate_tube_bore_mm: line[1],
  drain_tube_length_m: line[0],
  drain_tube_bore_mm: line[1],
  outlet_tube_length_m: line[0],
  outlet_tube_bore_mm: line[1],
  sediment_fitted_on: day,
  carbon_fitted_on: day,
  carbon_rated_L: number(10, 1e7),
  carbon_lot: text,
  element_fitted_on: day,
  element_serial: text,
  appliance: text,
  appliance_type: oneOf("combiOven", "steamer", "coffee", "ice", "dishwasher", "dispenser", "other"),
} as const satisfies Readonly<Record<string, Column>>;

export type ListColumn = keyof typeof LIST_COLUMNS;
type Value = string | number | boolean;

/** One row that can be taken in. */
export interface ListRow {
  readonly line: number;
  readonly values: Readonly<Partial<Record<ListColumn, Value>>>;
}

/** One row that cannot, with the reason. */
export interface RefusedRow {
  readonly line: number;
  readonly code: string;
  readonly detail: Readonly<Record<string, string | number>>;
}

export interface ListPreview {
  readonly rows: readonly ListRow[];
  readonly refused: readonly RefusedRow[];
  /** Columns of the file that are not known here; they are not taken in. */
  readonly unknownColumns: readonly string[];
}

/**
 * A list of sites and units read and checked, nothing written yet. A bad row does not stop the good ones.
 * Refused as a whole: "list-empty", "list-column-missing", "list-column-twice".
 */
export function readList(csv: string): Outcome<ListPreview> {
  const [head, ...body] = readCsv(csv);
  if (!head || head.unclosed) return refused("list-empty");
  const columns = head.cells.map((cell) => cell.trim());
  const twice = columns.find((name, i) => name !== "" && columns.indexOf(name) !== i);
  if (twice !== undefined) return refused("list-column-twice", { column: twice });
  if (!columns.includes("site")) return refused("list-column-missing", { column: "site" });
  const read = body.map((line) => rowOf(line, columns));
  const { rows, refused: clashes } = withoutClashes(read.flatMap((one) => ("values" in one ? [one] : [])));
  return known({
    rows,
    refused: [...read.flatMap((one) => ("code" in one ? [one] : [])), ...clashes].sort(
      (a, b) => a.line - b.line,
    ),
    unknownColumns: columns.filter((name) => name !== "" && !isColumn(name)),
  });
}

const isColumn = (name: string): name is ListColumn => Object.hasOwn(LIST_COLUMNS, name);

function rowOf(line: CsvLine, columns: readonly string[]): ListRow | RefusedRow {
  const no = (code: string, detail: RefusedRow["detail"] = {}) => ({ line: line.line, code, detail });
  if (line.unclosed) return no("row-unclosed-quote");
  if (
    line.cells.length > columns.length &&
    line.cells.slice(columns.length).some((cell) => cell.trim() !== "")
  )
    return no("row-too-long", { cells: line.cells.length, columns: columns.length });
  const values: Partial<Record<ListColumn, Value>> = {};
  for (const [i, name] of columns.entries()) {
    const cell = (line.cells[i] ?? "").trim();
    if (!isColumn(name) || cell === "") continue;
    const value = readAs(cell, LIST_COLUMNS[name]);
    if (value.kind !== "known")
      return no(value.kind === "refused" ? value.code : "not-a-number", {
        column: name,
        text: cell.slice(0, 40),
        ...(value.kind === "refused" && value.detail),
      });
    values[name] = value.value;
  }
  return values.site === undefined ? no("row-without-site") : { line: line.line, values };
}

const YES = ["yes", "y", "true", "1", "x"];
const NO = ["no", "n", "false", "0"];

function readAs(cell: string, column: Column): Outcome<Value> {
  if (checkText(cell).kind !== "known") return refused("row-unkeepable-text");
  switch (column.kind) {
    case "text":
      return known(cell);
    case "yesNo": {
      const word = cell.toLowerCase();
      return YES.includes(word) || NO.includes(word)
        ? known(YES.includes(word))
        : refused("row-not-yes-or-no");
    }
    case "oneOf":
      return column.words?.includes(cell)
        ? known(cell)
        : refused("row-not-a-type", { types: (column.words ?? []).join(", ") });
    case "day":
      return isDay(cell) ? known(cell) : refused("row-no-such-day");
    case "number":
      return numberOf(cell, column.range ?? [-1e9, 1e9]);
  }
}

function numberOf(cell: string, [low, high]: readonly [number, number]): Outcome<number> {
  const typed = parseReading(cell);
  if (typed.kind !== "known") return refused("row-not-a-number");
  const { value } = typed.value;
  return value >= low && value <= high ? known(value) : refused("row-out-of-range", { low, high });
}

/** A day of the calendar written as 2026-11-25. */
function isDay(cell: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(cell)) return false;
  const date = new Date(`${cell}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().slice(0, 10) === cell;
}

/** Two rows may share a site, never a serial number, a sticker or one code for two sites. */
function withoutClashes(rows: readonly ListRow[]) {
  const seen = new Map<string, string>();
  const good: ListRow[] = [];
  const bad: RefusedRow[] = [];
  for (const row of rows) {
    const clash = clashOf(row, seen);
    if (clash) bad.push({ line: row.line, ...clash });
    else good.push(row);
  }
  return { rows: good, refused: bad };
}

function clashOf({ line, values }: ListRow, seen: Map<string, string>): Omit<RefusedRow, "line"> | undefined {
  const { site, site_code: code, serial, sticker, unit } = values;
  const home = `${site}`.toLowerCase();
  if (code !== undefined && (seen.get(`code ${code}`) ?? home) !== home)
    return { code: "row-code-taken", detail: { text: `${code}` } };
  for (const [name, value] of [
    ["serial", serial],
    ["sticker", sticker],
  ] as const)
    if (value !== undefined && seen.has(`${name} ${value}`))
      return {
        code: "row-twice",
        detail: { column: name, text: `${value}`, line: seen.get(`${name} ${value}`)! },
      };
  const place = `unit ${home} ${code ?? ""} ${unit}`.toLowerCase();
  if (unit !== undefined && seen.has(place))
    return { code: "row-twice", detail: { column: "unit", text: `${unit}`, line: seen.get(place)! } };
  if (code !== undefined) seen.set(`code ${code}`, home);
  if (serial !== undefined) seen.set(`serial ${serial}`, `${line}`);
  if (sticker !== undefined) seen.set(`sticker ${sticker}`, `${line}`);
  if (unit !== undefined) seen.set(place, `${line}`);
  return undefined;
}
