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
import { DAY_MS } from "./days.ts";

/** Why somebody has to come, and by which day ("2026-11-25"); no day: as soon as it suits. */
export interface DueReason {
  readonly why:
    | "visitOpen"
    | "bypassEnds"
    | "loanEnds"
    | "date"
    | "litres"
    | "hours"
    | "openPoint"
    | "noVisit";
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
  const [meter, counter] = [readingsOf(file, "waterMeter"), readingsOf(file, "hourCounter")];
  const now = atTheDesk(file, today);
  return dueItems(file, now, today).flatMap((item): DueReason[] => {
    const part = file.parts.find((one) => one.id === item.part);
    const byLitres = item.litresLeft && usedUpOn(item.litresLeft.low, part?.ratedLitres ?? 0, meter);
    const byHours =
      item.hoursLeft === undefined ? undefined : usedUpOn(item.hoursLeft, part?.ratedHours ?? 0, counter);
    const ways = [
      { why: "date", on: item.byDate ?? undefined },
      { why: "litres", on: byLitres },
      { why: "hours", on: byHours },
    ] as const;
    const known = ways.flatMap(({ why, on }) => (on ? [{ why, on, role: item.role, part: item.part }] : []));
    return known.sort((x, y) => compare(x.on, y.on)).slice(0, 1);
  });
}

/** A visit nobody makes: today's parts with the newest meter reading, so that what is due is judged as it stands now. */
function atTheDesk(file: UnitFile, today: string): KeptVisit {
  const read = file.visits.findLast((visit) => readingIn(visit, "waterMeter") !== undefined);
  const counted = file.visits.findLast((visit) => readingIn(visit, "hourCounter") !== undefined);
  const hourCounter = counted && readingIn(counted, "hourCounter");
  const { asFound = {}, asLeft = {} } = read?.readings ?? {};
  return {
    id: "due",
    unit: file.unit.id,
    startedAt: today,
    readings: { asFound, asLeft: { ...asLeft, ...(hourCounter && { hourCounter }) } },
    answers: {},
    exceptions: {},
    work: {},
    photos: {},
    skipped: [],
  } as unknown as KeptVisit;
}

/** What a counter stood at: litres, or hours. */
interface Counted {
  readonly dayMs: number;
  readonly count: number;
}

/** Two readings nearer together than this say little about a usual week. */
const SHORTEST_DAYS = 7;
const USED_SHARE = 0.9;

type Counter = "waterMeter" | "hourCounter";

const readingIn = (visit: KeptVisit, slot: Counter) =>
  visit.readings.asLeft[slot] ?? visit.readings.asFound[slot];

function readingsOf(file: UnitFile, slot: Counter): readonly Counted[] {
  return file.visits.flatMap((visit) => {
    const reading = readingIn(visit, slot);
    const dayMs = Date.parse(visit.startedAt ?? "");
    if (!reading || reading.value === null || Number.isNaN(dayMs)) return [];
    const count = inBaseUnit(slot, reading.value, reading.unit);
    return count.kind === "known" ? [{ dayMs, count: count.value }] : [];
  });
}

/** The day what is left runs down to the last tenth of what a part is made for, at the pace between the last two readings far enough apart. */
function usedUpOn(left: number, rated: number, counted: readonly Counted[]): string | undefined {
  const last = counted.at(-1);
  const before = last && counted.findLast((one) => last.dayMs - one.dayMs >= SHORTEST_DAYS * DAY_MS);
  const pace = last && before ? ((last.count - before.count) / (last.dayMs - before.dayMs)) * DAY_MS : 0;
  const usable = left - (1 - USED_SHARE) * rated;
  if (!last || (usable > 0 && !(pace > 0))) return undefined;
  const days = usable > 0 ? Math.floor(usable / pace) : 0;
  return days > 36500 ? undefined : new Date(last.dayMs + days * DAY_MS).toISOString().slice(0, 10);
}
