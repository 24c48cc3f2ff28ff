import type { Book, Kept, VanEntry } from "@tapside/records";
import type { CarryLine } from "./carry-list.ts";

/** Parts of one kind in the van. */
export interface VanLine {
  readonly role: string;
  /** In the van now; never below zero. */
  readonly inVan: number;
  /** Ordered and not yet loaded. */
  readonly ordered: number;
  /** Fitted at visits since the last count, or since the first entry. */
  readonly used: number;
  /** More was fitted or returned than was ever loaded: the count is wrong. */
  readonly countAgain: boolean;
}

type Entry = Kept<VanEntry>;

/**
 * What is in the van, by kind of part: the last count, what was loaded since, less what was returned and what visits have fitted.
 * A kind of which nothing was ever written is not here: not counted is not the same as none.
 */
export function vanStock(book: Book): readonly VanLine[] {
  const byRole = new Map<string, Entry[]>();
  for (const entry of book.vanEntry.values())
    if (entry.role && entry.at) byRole.set(entry.role, [...(byRole.get(entry.role) ?? []), entry]);
  return [...byRole]
    .map(([role, entries]) => lineOf(book, role, entries))
    .sort((a, b) => (a.role < b.role ? -1 : 1));
}

function lineOf(book: Book, role: string, entries: readonly Entry[]): VanLine {
  const sorted = [...entries].sort((a, b) => (a.at! + a.id < b.at! + b.id ? -1 : 1));
  const from = sorted.findLast((one) => one.why === "counted") ?? sorted[0]!;
  const later = sorted.slice(sorted.indexOf(from));
  const used = fittedSince(book, role, from.at!);
  const left = total(later, "counted") + total(later, "loaded") - total(later, "returned") - used;
  return { role, inVan: Math.max(0, left), ordered: stillOrdered(sorted), used, countAgain: left < 0 };
}

const total = (entries: readonly Entry[], why: VanEntry["why"]): number =>
  entries.reduce((sum, one) => (one.why === why ? sum + (one.count ?? 0) : sum), 0);

/** What is loaded comes off what was ordered before. */
const stillOrdered = (sorted: readonly Entry[]): number =>
  sorted.reduce((open, { why, count = 0 }) => {
    if (why === "ordered") return open + count;
    return why === "loaded" ? Math.max(0, open - count) : open;
  }, 0);

/** Parts of this kind that visits begun since then say they have fitted. */
function fittedSince(book: Book, role: string, at: string): number {
  let count = 0;
  for (const visit of book.visit.values()) {
    if (Date.parse(visit.startedAt ?? "") < Date.parse(at)) continue;
    for (const [task, work] of Object.entries(visit.work))
      if (work.state === "done" && task.split(":")[0] === "replace" && task.split(":")[1] === role) count++;
  }
  return count;
}

/** One line of a carry list against the van. */
export interface CarryInVan extends CarryLine {
  /** Absent where this kind was never counted. */
  readonly inVan?: number;
  readonly short?: number;
  /** Short, and not ordered either. */
  readonly toOrder?: number;
}

export const carryInVan = (carry: readonly CarryLine[], stock: readonly VanLine[]): readonly CarryInVan[] =>
  carry.map((line) => {
    const there = stock.find((one) => one.role === line.role);
    if (!there) return line;
    const short = Math.max(0, line.count - there.inVan);
    return { ...line, inVan: there.inVan, short, toOrder: Math.max(0, short - there.ordered) };
  });
