import { type Book, type UnitFile, unitFile } from "@tapside/records";
import { byUrgency, type DueRow, dueRow, loansOf } from "./due-list.ts";

type DueList = (book: Book, today: string) => readonly DueRow[];

/** As `dueList`, judging anew only the units whose records have changed since it was last asked; a row that still holds is the same object. */
export function keptDueList(): DueList {
  let last: { readonly book: Book; readonly today: string; readonly rows: readonly DueRow[] } | undefined;
  let byUnit: ReadonlyMap<string, Judged> = new Map();
  return (book, today) => {
    if (last && last.today === today && sameShelves(last.book, book)) return last.rows;
    const usable = last?.today === today && last.book.instrument === book.instrument;
    const judged = judgeAll(book, today, usable ? byUnit : new Map());
    byUnit = judged;
    last = { book, today, rows: [...judged.values()].map(({ row }) => row).sort(byUrgency) };
    return last.rows;
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

function judgeAll(book: Book, today: string, before: ReadonlyMap<string, Judged>) {
  const loans = loansOf(book);
  const judged = new Map<string, Judged>();
  for (const id of book.unit.keys()) {
    const file = unitFile(book, id);
    if (!file) continue;
    const loan = loans.get(id);
    const old = before.get(id);
    const holds = old && old.loan === loan && sameFile(old.row.file, file);
    judged.set(id, holds ? old : { row: dueRow(file, today, loan), loan });
  }
  return judged;
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
