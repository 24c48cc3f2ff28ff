import { known, mapOutcome, missing, type Outcome, refused } from "@tapside/quantities";
import {
  CONSTITUENTS,
  completeWater,
  LABORATORY_UNCERTAINTY,
  quantile,
  type ReportedWater,
  type ReportLine,
  type ReportQuality,
  readingsOfReport,
  readReport,
  reportedId,
  reportQuality,
  seededUniform,
} from "@tapside/water";
import type { CliIo, CommandVerb } from "../command-verb.ts";
import { options } from "../command-verb.ts";
import { readTable, type Table, writeTable } from "../csv.ts";
import { sentence } from "../sentence.ts";
import { type Cells, cell, shown } from "./water-input.ts";

/** One bottle or one yearly report: where it comes from and its lines. */
interface Report {
  readonly bottle: string;
  readonly place: string;
  readonly row: number;
  readonly lines: Outcome<readonly ReportLine[]>;
}

const HEADS = {
  name: ["quantity", "parameter", "analyte", "substance", "constituent", "name"],
  mean: ["mean", "average", "value", "result", "typical"],
  low: ["low", "min", "minimum", "lowest", "from"],
  high: ["high", "max", "maximum", "highest", "to"],
  unit: ["unit", "units"],
  bottle: ["bottle", "bottle_code", "sample", "sample_id", "code", "id"],
  place: ["place", "sampling_place", "location", "sampling_point", "site"],
} as const;

const headOf = (columns: readonly string[], head: keyof typeof HEADS) =>
  columns.find((column) => (HEADS[head] as readonly string[]).includes(column.trim().toLowerCase()));

/** Long tables have a line a figure; wide ones a column a figure with its unit in the name (`Ca_mg`, `EC25_uScm`). */
function reportsOf({ columns, rows }: Table): readonly Report[] {
  const at = Object.fromEntries(
    Object.keys(HEADS).map((head) => [head, headOf(columns, head as keyof typeof HEADS)]),
  ) as Record<keyof typeof HEADS, string | undefined>;
  const get = (row: Cells, head: keyof typeof HEADS) => row[at[head] ?? ""] ?? "";
  if (at.name === undefined)
    return rows.map((row, i) => ({
      bottle: get(row, "bottle"),
      place: get(row, "place"),
      row: i + 2,
      lines: wideLines(columns, row),
    }));
  const groups = new Map<string, Report & { own: Outcome<ReportLine>[] }>();
  rows.forEach((row, i) => {
    const [bottle, place] = [get(row, "bottle"), get(row, "place")];
    const key = JSON.stringify([bottle, place]);
    const group = groups.get(key) ?? { bottle, place, row: i + 2, lines: known([]), own: [] };
    group.own.push(longLine(row, at));
    groups.set(key, group);
  });
  return [...groups.values()].map(({ own, ...group }) => ({ ...group, lines: together(own) }));
}

function together(lines: readonly Outcome<ReportLine>[]): Outcome<readonly ReportLine[]> {
  const bad = lines.find((line) => line.kind === "refused");
  if (bad?.kind === "refused") return bad;
  return known(lines.flatMap((line) => (line.kind === "known" ? [line.value] : [])));
}

function longLine(row: Cells, at: Record<string, string | undefined>): Outcome<ReportLine> {
  const line: Record<string, string | number> = { name: row[at.name!] ?? "", unit: row[at.unit ?? ""] ?? "" };
  for (const head of ["mean", "low", "high"]) {
    const text = (row[at[head] ?? ""] ?? "").trim();
    if (text === "" || /^(-|–|nd|n\/d|not detected)$/i.test(text)) continue;
    const value = Number(text.replace(/^</, "").replace(",", "."));
    if (!Number.isFinite(value)) return refused("not-a-number", { name: String(line.name), text });
    line[head] = /^</.test(text) ? value / 2 : value;
  }
  return known(line as unknown as ReportLine);
}

const COLUMN_UNITS: readonly (readonly [RegExp, string])[] = [
  [/_CaCO3_mg$/i, "mg/L as CaCO3"],
  [/_mg$/i, "mg/L"],
  [/_uScm$/i, "µS/cm"],
  [/_C$/i, "°C"],
];

function wideLines(columns: readonly string[], row: Cells): Outcome<readonly ReportLine[]> {
  const lines: Outcome<ReportLine>[] = columns
    .filter((column) => reportedId(column) !== undefined)
    .map((column) => {
      const value = cell(row, column);
      if (value === undefined) return missing(column);
      if (!Number.isFinite(value)) return refused("not-a-number", { name: column, text: row[column] ?? "" });
      const unit = COLUMN_UNITS.find(([pattern]) => pattern.test(column))?.[1] ?? "";
      return known({ name: column, unit, mean: value });
    });
  return together(lines);
}

const COLUMNS = [
  "bottle",
  "place",
  "charge_imbalance_pct",
  "charge",
  "EC25_calculated",
  "EC_ratio",
  "conductivity",
  "suspected",
  "missing",
  ...CONSTITUENTS.flatMap((id) => [`${id}_mg_p05`, `${id}_mg_p50`, `${id}_mg_p95`]),
];

function qualityCells(quality: ReportQuality): Record<string, string | number> {
  return {
    charge_imbalance_pct: shown(quality.chargeImbalancePercent ?? Number.NaN),
    charge: quality.chargeVerdict,
    EC25_calculated: shown(quality.calculatedEc25UsPerCm ?? Number.NaN),
    EC_ratio: shown(quality.conductivityRatio ?? Number.NaN),
    conductivity: quality.conductivityVerdict,
    suspected: quality.suspicions.join(" "),
    missing: quality.missing.join(" "),
  };
}

function completed(report: ReportedWater): Outcome<Record<string, string | number>> {
  const readings = readingsOfReport(report);
  const outcome = completeWater(readings, {
    random: seededUniform(90),
    samples: 400,
    uncertainty: LABORATORY_UNCERTAINTY,
  });
  return mapOutcome(outcome, (samples) => {
    const cells: Record<string, string | number> = {};
    for (const id of CONSTITUENTS)
      for (const [level, p] of [
        ["p05", 0.05],
        ["p50", 0.5],
        ["p95", 0.95],
      ] as const)
        cells[`${id}_mg_${level}`] = shown(
          quantile(
            samples.map((water) => water.ions[id] ?? 0),
            p,
          ),
        );
    return known(cells);
  });
}

const judged = (report: Report): Outcome<Record<string, string | number>> =>
  mapOutcome(report.lines, (lines) =>
    mapOutcome(readReport(lines), (water) =>
      mapOutcome(reportQuality(water), (quality) =>
        mapOutcome(completed(water), (cells) =>
          known({ bottle: report.bottle, place: report.place, ...qualityCells(quality), ...cells }),
        ),
      ),
    ),
  );

/** A laboratory's analysis or a utility's yearly report judged, and completed where it is silent. */
export const waterAnalysisVerb: CommandVerb = {
  summary:
    "a laboratory analysis or a utility's yearly report: does it agree with itself, which units slipped",
  usage:
    "water analysis IN.csv -o OUT.csv [--json]\n  a line a figure (quantity, mean, low, high, unit) or a column a figure (Ca_mg …); bottle and place as columns",
  examples: [{ args: ["water", "analysis", "examples/larkmoor-water-report.csv"], prints: "agrees" }],
  run: (args, io) => runAnalysis(args, io),
};

function runAnalysis(args: readonly string[], io: CliIo): number {
  const { plain, named } = options(args, ["-o"]);
  const [input] = plain;
  if (!input) return complain(io, "Name a table: tapside water analysis IN.csv -o OUT.csv");
  const table = readTable(io.readText(input));
  if (table.kind !== "known") return complain(io, `${input}: ${sentence(table)}`);
  const done = reportsOf(table.value).map((report) => ({ report, outcome: judged(report) }));
  const rows = done.flatMap(({ outcome }) => (outcome.kind === "known" ? [outcome.value] : []));
  const text = writeTable(COLUMNS, rows);
  if (named["-o"]) io.writeText(named["-o"], text);
  if (named["--json"]) io.print(JSON.stringify({ rows }));
  else if (!named["-o"]) io.print(text.trimEnd());
  const bad = done.flatMap(({ report, outcome }) =>
    outcome.kind === "known" ? [] : [`${report.bottle || `row ${report.row}`} refused: ${sentence(outcome)}`],
  );
  for (const line of bad) io.complain(line);
  return bad.length > 0 || rows.length === 0 ? 1 : 0;
}

function complain(io: CliIo, line: string): number {
  io.complain(line);
  return 2;
}
