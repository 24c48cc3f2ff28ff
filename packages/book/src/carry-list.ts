import type { Book } from "@tapside/records";
import { daysAfter } from "./days.ts";
import type { DueRow } from "./due-list.ts";

export interface CarryLine {
  readonly role: string;
  readonly count: number;
  readonly units: readonly string[];
}

const AHEAD_DAYS = 31;

/**
 * Parts to load for these units on a day: what is due by then or within the month after it, and what open points ask for.
 * A month ahead, because nobody drives twice for one cartridge: common practice, no source.
 */
export function carryList(rows: readonly DueRow[], day: string): readonly CarryLine[] {
  const by = daysAfter(day, AHEAD_DAYS);
  const wanted = new Map<string, string[]>();
  for (const row of rows) {
    for (const role of rolesOf(row, by)) wanted.set(role, [...(wanted.get(role) ?? []), row.unit]);
  }
  return [...wanted]
    .map(([role, units]) => ({ role, count: units.length, units: [...new Set(units)] }))
    .sort((a, b) => (a.role < b.role ? -1 : 1));
}

function rolesOf(row: DueRow, by: string): readonly string[] {
  const due = row.reasons.flatMap((reason) =>
    reason.role && (reason.on ?? "9999") <= by ? [reason.role] : [],
  );
  const promised = row.file.openPoints.flatMap(
    (point) => /^work:replace:(\w+)/.exec(point.code ?? "")?.[1] ?? [],
  );
  return [...due, ...promised.filter((role) => !due.includes(role))];
}

/** Units planned for a day, in the order of their times. */
export function plannedFor(book: Book, day: string) {
  return [...book.plan.values()]
    .filter((plan) => plan.on === day && book.unit.has(plan.unit ?? ""))
    .sort((a, b) => ((a.at ?? "99") + a.id < (b.at ?? "99") + b.id ? -1 : 1));
}
