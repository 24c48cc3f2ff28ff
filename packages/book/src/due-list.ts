import { dueItems } from "@tapside/assessment";
import {
  type Book,
  inBaseUnit,
  type Kept,
  type KeptVisit,
  type Kinds,
  type UnitFile,
  unitFile,
} from "@tapside/records";

/** Why somebody has to come, and by which day ("2026-11-25"); no day: as soon as it suits. */
export interface DueReason {
  readonly why: "visitOpen" | "bypassEnds" | "loanEnds" | "date" | "litres" | "openPoint" | "noVisit";
  readonly on?: string;
  readonly role?: string;
  readonly part?: string;
  /** Of an open point. */
  readonly code?: string;
  readonly detail?: string;
}

/** One unit of the due list: its reasons, the first day first. */
export interface DueRow {
  readonly unit: string;
  readonly file: UnitFile;
  readonly reasons: readonly DueReason[];
  /** Its first reason's day has come. */
  readonly overdue: boolean;
}

/** Every unit of the book, the most urgent first: by date or by litres, whichever comes first. `today` is an ISO date. */
export function dueList(book: Book, today: string): readonly DueRow[] {
  const loans = loansOf(book);
  return [...book.unit.keys()]
    .flatMap((id) => {
      const file = unitFile(book, id);
      return file ? [dueRow(file, today, loans.get(id))] : [];
    })
    .sort(byUrgency);
}

/** One unit's row; `loan` is the day it should be back from a loan. */
export function dueRow(file: UnitFile, today: string, loan: string | undefined): DueRow {
  const reasons = [...visitReasons(file, today), ...loanReason(loan), ...partReasons(file, today)];
  const sorted = [...reasons, ...pointReasons(file)].sort((a, b) => compare(dayOf(a), dayOf(b)));
  return { unit: file.unit.id, file, reasons: sorted, overdue: (sorted[0]?.on ?? "9999") <= today };
}

const dayOf = (reason: DueReason | undefined): string => reason?.on ?? "9998";
const titleOf = ({ file }: DueRow): string => `${file.site.name} ${file.unit.name}`;
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const rank = (row: DueRow): string =>
  row.reasons[0]?.why === "visitOpen" ? "0" : (row.reasons[0] && dayOf(row.reasons[0])) || "9999";
/** The most urgent first; a name and then an id decide between equals. */
export const byUrgency = (a: DueRow, b: DueRow): number =>
  compare(rank(a), rank(b)) || compare(titleOf(a), titleOf(b)) || compare(a.unit, b.unit);

function visitReasons(file: UnitFile, today: string): DueReason[] {
  const last = file.visits.at(-1);
  if (!last) return [{ why: "noVisit" }];
  const bypass = last.answers.bypass;
  const bypassed = last.answers.inUse === "bypassed" && bypass?.decision === "keepBypassed";
  return [
    ...(last.closed ? [] : [{ why: "visitOpen", on: today } as const]),
    ...(bypassed && bypass.until ? [{ why: "bypassEnds", on: bypass.until } as const] : []),
  ];
}

const loanReason = (until: string | undefined): DueReason[] =>
  until ? [{ why: "loanEnds", on: until }] : [];

/** Units on loan now, with the day they should be back. */
export function loansOf(book: Book): ReadonlyMap<string, string> {
  const newest = new Map<string, Kept<Kinds["move"]>>();
  for (const move of book.move.values()) {
    const before = newest.get(move.unit ?? "");
    if (!before || (move.on ?? "") + move.id > (before.on ?? "") + before.id)
      newest.set(move.unit ?? "", move);
  }
  return new Map(
    [...newest].flatMap(([unit, move]) => (move.why === "lent" && move.until ? [[unit, move.until]] : [])),
  );
}

function pointReasons(file: UnitFile): DueReason[] {
  return file.openPoints.map((point) => ({
    why: "openPoint",
    ...(point.due && { on: point.due }),
    ...(point.code && { code: point.code }),
    ...(point.detail && { detail: point.detail }),
  }));
}

function partReasons(file: UnitFile, today: string): DueReason[] {
  const meter = meterReadings(file);
  const now = atTheDesk(file, today);
  return dueItems(file, now, today).flatMap((item): DueReason[] => {
    const byLitres = item.litresLeft && litresDay(item.part, item.litresLeft.low, file, meter);
    const of = { role: item.role, part: item.part };
    if (byLitres && (!item.byDate || byLitres < item.byDate)) return [{ why: "litres", on: byLitres, ...of }];
    return item.byDate ? [{ why: "date", on: item.byDate, ...of }] : [];
  });
}

/** A visit nobody makes: today's parts with the newest meter reading, so that what is due is judged as it stands now. */
function atTheDesk(file: UnitFile, today: string): KeptVisit {
  const read = file.visits.findLast((visit) => meterOf(visit) !== undefined);
  return {
    id: "due",
    unit: file.unit.id,
    startedAt: today,
    readings: read?.readings ?? { asFound: {}, asLeft: {} },
    answers: {},
    exceptions: {},
    work: {},
    photos: {},
    skipped: [],
  } as unknown as KeptVisit;
}

interface MeterReading {
  readonly dayMs: number;
  readonly litres: number;
}

const DAY_MS = 24 * 3600 * 1000;
/** Two readings nearer together than this say little about a usual week. */
const SHORTEST_DAYS = 7;
const LITRES_SHARE = 0.9;

const meterOf = (visit: KeptVisit) => visit.readings.asLeft.waterMeter ?? visit.readings.asFound.waterMeter;

function meterReadings(file: UnitFile): readonly MeterReading[] {
  return file.visits.flatMap((visit) => {
    const reading = meterOf(visit);
    const dayMs = Date.parse(visit.startedAt ?? "");
    if (!reading || reading.value === null || Number.isNaN(dayMs)) return [];
    const litres = inBaseUnit("waterMeter", reading.value, reading.unit);
    return litres.kind === "known" ? [{ dayMs, litres: litres.value }] : [];
  });
}

/** The day the part's litres run down to the last tenth, at the pace between the last two readings far enough apart. */
function litresDay(
  part: string,
  leftL: number,
  file: UnitFile,
  meter: readonly MeterReading[],
): string | undefined {
  const last = meter.at(-1);
  const before = last && meter.findLast((one) => last.dayMs - one.dayMs >= SHORTEST_DAYS * DAY_MS);
  const pace = last && before ? ((last.litres - before.litres) / (last.dayMs - before.dayMs)) * DAY_MS : 0;
  const rated = file.parts.find((one) => one.id === part)?.ratedLitres ?? 0;
  const usable = leftL - (1 - LITRES_SHARE) * rated;
  if (!last || (usable > 0 && !(pace > 0))) return undefined;
  const days = usable > 0 ? Math.floor(usable / pace) : 0;
  return days > 36500 ? undefined : new Date(last.dayMs + days * DAY_MS).toISOString().slice(0, 10);
}
