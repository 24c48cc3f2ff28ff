import { type Book, type UnitFile, unitFile } from "@tapside/records";
import { byUrgency, type DueRow, dueRow, loansOf } from "./due-list.ts";

export interface KeptDueList {
  rows(book: Book, today: string): readonly DueRow[];
  /** The same work a stretch at a time: once it has run to its end, `rows` of this book and day is at hand. */
  stretches(book: Book, today: string): Generator<void, void>;
}

/** As `dueList`, judging anew only the units whose records have changed since it was last asked; a row that still holds is the same object. */
export function keptDueList(): KeptDueList {
  let last: { readonly book: Book; readonly today: string; readonly rows: readonly DueRow[] } | undefined;
  let byUnit: ReadonlyMap<string, Judged> = new Map();
  const isKept = (book: Book, today: string) =>
    last !== undefined && last.today === today && sameShelves(last.book, book);
  function* stretches(book: Book, today: string) {
    if (isKept(book, today)) return;
    const usable = last?.today === today && last.book.instrument === book.instrument;
    const judged = new Map<string, Judged>();
    for (const stretch of judgeAll(book, today, usable ? byUnit : new Map(), judged)) yield stretch;
    byUnit = judged;
    last = { book, today, rows: [...judged.values()].map(({ row }) => row).sort(byUrgency) };
  }
  return {
    stretches,
    rows: (book, today) => {
      for (const _ of stretches(book, today));
      return last?.rows ?? [];
    },
  };
}

interface Judged {
  readonly row: DueRow;
  readonly loan: string | undefined;
}

/** The shelves a due list stands on. */
const SHELVES = [
  "site",
  "point",
  "unit",
  "appliance",
  "limit",
  "model",
  "part",
  "instrument",
  "visit",
  "openPoint",
  "waterAnalysis",
  "move",
] as const satisfies readonly (keyof Book)[];

const sameShelves = (a: Book, b: Book): boolean => SHELVES.every((shelf) => a[shelf] === b[shelf]);

const UNITS_A_STRETCH = 20;

function* judgeAll(
  book: Book,
  today: string,
  before: ReadonlyMap<string, Judged>,
  judged: Map<string, Judged>,
): Generator<void, void> {
  const loans = loansOf(book);
  for (const id of book.unit.keys()) {
    const file = unitFile(book, id);
    if (!file) continue;
    const loan = loans.get(id);
    const old = before.get(id);
    const holds = old && old.loan === loan && sameFile(old.row.file, file);
    judged.set(id, holds ? old : { row: dueRow(file, today, loan), loan });
    if (judged.size % UNITS_A_STRETCH === 0) yield;
  }
}

function sameFile(a: UnitFile, b: UnitFile): boolean {
  if (a.unit !== b.unit || !sameOrStandIn(a.site, b.site) || !sameOrStandIn(a.point, b.point)) return false;
  const lists = ["parts", "visits", "openPoints", "settledPoints", "analyses"] as const;
  return lists.every((list) => sameItems(a[list] ?? [], b[list] ?? [])) && sameAppliances(a, b);
}

/** A site or point that is not in the book is stood in for by a new object each time. */
const sameOrStandIn = (a: { readonly id: string }, b: { readonly id: string }): boolean =>
  a === b || (a.id === b.id && Object.keys(a).length === 1 && Object.keys(b).length === 1);

const sameItems = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((item, i) => item === b[i]);

/** Appliances are put together anew for every file, from their own fields and those of their type. */
const sameAppliances = (a: UnitFile, b: UnitFile): boolean =>
  a.appliances.length === b.appliances.length &&
  JSON.stringify(a.appliances) === JSON.stringify(b.appliances);
