import { readCsv } from "@tapside/book";
import { known, type Outcome, refused } from "@tapside/quantities";
import type { WaterAnalysisEntry } from "@tapside/records";
import { plainLine, type RefusedReportRow, type ReportedId, reportsOfTable } from "@tapside/water";

/** A report as it would be kept, and what of it is not taken in. */
export interface ReportPreview {
  readonly row: number;
  readonly entry: Omit<WaterAnalysisEntry, "site">;
}

export interface ReportFile {
  readonly reports: readonly ReportPreview[];
  readonly refused: readonly RefusedReportRow[];
}

/** Read at each visit, not kept with a report. */
const NOT_KEPT: ReadonlySet<ReportedId> = new Set(["totalChlorine"]);

/** A laboratory's or utility's file, looked at and not yet kept. Refused as a whole: "list-empty", "report-nothing-known". */
export function reportFile(text: string): Outcome<ReportFile> {
  const [head, ...body] = readCsv(text);
  if (!head || head.unclosed) return refused("list-empty");
  const columns = head.cells.map((cell) => cell.trim());
  const twice = columns.find((name, i) => name !== "" && columns.indexOf(name) !== i);
  if (twice !== undefined) return refused("list-column-twice", { column: twice });
  const whole = body.filter(({ unclosed }) => !unclosed);
  const read = reportsOfTable({
    columns,
    rows: whole.map(({ cells }) => Object.fromEntries(columns.map((name, i) => [name, cells[i] ?? ""]))),
    rowNumbers: whole.map(({ line }) => line),
  });
  const reports = read.map((report) => ({ row: report.row, entry: entryOf(report) }));
  const unclosed = body.filter((line) => line.unclosed);
  const bad = [
    ...read.flatMap((report) => report.refused),
    ...unclosed.map(({ line }) => ({ row: line, code: "row-unclosed-quote", detail: {} })),
  ];
  const taken = reports.filter(({ entry }) => entry.lines && entry.lines.length > 0);
  if (taken.length === 0 && bad.length === 0) return refused("report-nothing-known");
  return known({ reports: taken, refused: bad.sort((a, b) => a.row - b.row) });
}

function entryOf({ bottle, place, sampledOn, lines }: ReturnType<typeof reportsOfTable>[number]) {
  const ranges = lines.some(({ low, high }) => low !== undefined || high !== undefined);
  return {
    origin: ranges ? ("utility" as const) : ("laboratory" as const),
    ...(sampledOn && { sampledOn }),
    ...(bottle && { bottleCode: bottle }),
    ...(place && { samplingPlace: place }),
    lines: lines.flatMap((line) => {
      const plain = plainLine(line);
      if (plain.kind !== "known" || NOT_KEPT.has(plain.value.id)) return [];
      const { id, ...kept } = plain.value;
      return [id === "temperatureC" ? { ...kept, name: "temperature" } : kept];
    }),
  };
}
