import { assess } from "@tapside/assessment";
import { type Book, type KeptVisit, staysBypassed, type UnitFile } from "@tapside/records";
import { writeCsv } from "./csv.ts";
import { daysAfter } from "./days.ts";
import type { DueRow } from "./due-list.ts";
import { minutesOf } from "./work-lines.ts";

export interface MonthVisit {
  readonly id: string;
  readonly on: string;
  readonly file: UnitFile;
  readonly kind: string;
  readonly technician: string;
  readonly minutes?: number;
}

export interface Counted {
  readonly id: string;
  readonly count: number;
}

/** What happened in a month over all units, or those of one chain, and what stands open at its telling. */
export interface MonthlySummary {
  readonly month: string;
  readonly sites: number;
  readonly visits: readonly MonthVisit[];
  readonly byKind: readonly Counted[];
  /** Findings outside their limit, by what was found; as found, each once a visit. */
  readonly findings: readonly Counted[];
  readonly partsUsed: readonly Counted[];
  readonly overdue: readonly DueRow[];
  readonly dueSoon: readonly DueRow[];
  readonly openPoints: readonly { readonly file: UnitFile; readonly point: UnitFile["openPoints"][number] }[];
  readonly bypassed: readonly { readonly file: UnitFile; readonly until: string }[];
}

export interface MonthAsked {
  /** "2026-11". */
  readonly month: string;
  /** Every unit's row of the due list, judged today. */
  readonly rows: readonly DueRow[];
  /** ISO date of today. */
  readonly today: string;
  readonly chain?: string | undefined;
  readonly settings: Book["settings"];
}

const SOON_DAYS = 31;

/** The summary, a visit's judgement at a time. */
export function* monthlySummary(asked: MonthAsked): Generator<void, MonthlySummary> {
  const { month, today, chain } = asked;
  const rows = asked.rows.filter(({ file }) => chain === undefined || file.site.chain === chain);
  const visits = rows.flatMap(({ file }) =>
    file.visits.filter((one) => startsIn(one, month)).map((one) => told(file, one)),
  );
  const findings: string[] = [];
  for (const visit of visits) {
    findings.push(...outside(visit, asked));
    yield;
  }
  const soon = daysAfter(today, SOON_DAYS);
  return {
    month,
    sites: new Set(rows.map(({ file }) => file.site.id)).size,
    visits: [...visits].sort((a, b) => (a.on + a.id < b.on + b.id ? -1 : 1)),
    byKind: counted(visits.map((one) => one.kind)),
    findings: counted(findings),
    partsUsed: counted(rows.flatMap(({ file }) => rolesFittedIn(file, month))),
    overdue: rows.filter((row) => row.overdue),
    dueSoon: rows.filter((row) => !row.overdue && (row.reasons[0]?.on ?? "9999") <= soon),
    openPoints: rows.flatMap(({ file }) => file.openPoints.map((point) => ({ file, point }))),
    bypassed: rows.flatMap(({ file }) => bypassedNow(file)),
  };
}

const startsIn = (visit: KeptVisit, month: string): boolean => (visit.startedAt ?? "").startsWith(month);

function told(file: UnitFile, visit: KeptVisit): MonthVisit {
  const minutes = minutesOf(visit);
  return {
    id: visit.id,
    on: (visit.startedAt ?? "").slice(0, 10),
    file,
    kind: visit.kind ?? "annual",
    technician: visit.technician ?? "",
    ...(minutes !== undefined && { minutes }),
  };
}

function outside({ id, file }: MonthVisit, { settings }: MonthAsked): readonly string[] {
  const visit = file.visits.find((one) => one.id === id);
  const asOf = visit?.endedAt ?? visit?.startedAt;
  if (!asOf) return [];
  const timeZone = file.site.timeZone ?? "UTC";
  const { findings } = assess(file, id, { asOf, timeZone, settings: settings.get("settings") ?? {} });
  const found = findings.filter((one) => one.phase === "asFound" && one.verdict === "outside");
  return [...new Set(found.map((one) => one.id))];
}

const rolesFittedIn = (file: UnitFile, month: string): readonly string[] =>
  file.parts.flatMap((part) =>
    part.fittedVisit && part.fittedOn?.startsWith(month) && part.role ? [part.role] : [],
  );

function bypassedNow(file: UnitFile) {
  const last = file.visits.at(-1);
  return last && staysBypassed(last) ? [{ file, until: last.answers.bypass?.until ?? "" }] : [];
}

/** The most frequent first; a name decides between equals. */
function counted(ids: readonly string[]): readonly Counted[] {
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts]
    .map(([id, count]) => ({ id, count }))
    .sort((a, b) => b.count - a.count || (a.id < b.id ? -1 : 1));
}

const COLUMNS = ["section", "site_code", "site", "unit", "date", "what", "count", "detail"] as const;
type Row = Partial<Record<(typeof COLUMNS)[number], string | number>>;

const ofUnit = ({ site, unit }: UnitFile): Row => ({
  site_code: site.code ?? "",
  site: site.name ?? "",
  unit: unit.name ?? "",
});

/** The summary as one table, a section under another. No prices. */
export function monthlyCsv(summary: MonthlySummary): string {
  const counts = (section: string, all: readonly Counted[]): readonly Row[] =>
    all.map(({ id, count }) => ({ section, what: id, count }));
  const due = (section: string, rows: readonly DueRow[]): readonly Row[] =>
    rows.map(({ file, reasons: [first] }) => ({
      section,
      ...ofUnit(file),
      date: first?.on ?? "",
      what: first?.why ?? "",
      detail: first?.role ?? first?.code ?? "",
    }));
  return writeCsv(COLUMNS, [
    { section: "month", what: summary.month, count: summary.sites, detail: "sites" },
    ...summary.visits.map(({ file, on, kind, technician, minutes }) => ({
      section: "visit",
      ...ofUnit(file),
      date: on,
      what: kind,
      ...(minutes !== undefined && { count: minutes }),
      detail: technician,
    })),
    ...counts("visits", summary.byKind),
    ...counts("outside", summary.findings),
    ...counts("part", summary.partsUsed),
    ...due("overdue", summary.overdue),
    ...due("due", summary.dueSoon),
    ...summary.openPoints.map(({ file, point }) => ({
      section: "open",
      ...ofUnit(file),
      date: point.due ?? "",
      what: point.code ?? "",
      detail: point.detail ?? "",
    })),
    ...summary.bypassed.map(({ file, until }) => ({
      section: "bypassed",
      ...ofUnit(file),
      date: until,
      what: "until",
    })),
  ]);
}
