import { type DueRow, keptDueList, ownersOf, searchText } from "@tapside/book";
import type { Book, UnitFile } from "@tapside/records";

import type { LineFacts } from "../store/first-list.ts";

import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { day } from "./day.ts";

/** A unit in the list: its line, and the text it is found by. */
export interface UnitLine {
  readonly id: string;
  readonly title: string;
  readonly line: string;
  readonly facts: LineFacts;
  /** Cannot be moved: its line has an end date. */
  readonly fixed: boolean;
  readonly text: string;
  readonly row: DueRow;
}

interface Last {
  readonly rows: readonly DueRow[];
  readonly ownership: Book["ownership"];
  readonly lines: readonly UnitLine[];
}

/** All units of the book, the most urgent first; lines that still hold are the same objects. `today` is an ISO date. */
export function keptUnitLines() {
  const due = keptDueList();
  const kept = new WeakMap<DueRow, { readonly owners: string; readonly line: UnitLine }>();
  let last: Last | undefined;
  const lines = (book: Book, today: string): readonly UnitLine[] => {
    const rows = due.rows(book, today);
    if (last?.rows === rows && last.ownership === book.ownership) return last.lines;
    const owners = ownersBySite(book);
    const made = rows.map((row) => {
      const names = owners.get(row.file.site.id) ?? [];
      const mark = names.join("\n");
      const old = kept.get(row);
      if (old?.owners === mark) return old.line;
      const line = lineOf(row, names, today);
      kept.set(row, { owners: mark, line });
      return line;
    });
    last = { rows, ownership: book.ownership, lines: made };
    return made;
  };
  return { lines, stretches: due.stretches };
}

function ownersBySite(book: Book): ReadonlyMap<string, readonly string[]> {
  const sites = new Set([...book.ownership.values()].map((one) => one.site ?? ""));
  return new Map([...sites].map((site) => [site, ownersOf(book, site).map((span) => span.owner)]));
}

/** Words are found when they are first asked for: of a long list only what is looked at is ever written out. */
function lineOf(row: DueRow, owners: readonly string[], today: string): UnitLine {
  const { file } = row;
  const facts = factsOf(row);
  let said: string | undefined;
  let text: string | undefined;
  return {
    id: row.unit,
    title: titleOf(file),
    facts,
    get line() {
      said ??= sayLine(facts, today);
      return said;
    },
    fixed: row.reasons[0]?.why === "bypassEnds" || row.reasons[0]?.why === "loanEnds",
    get text() {
      text ??= searchText(file, owners);
      return text;
    },
    row,
  };
}

/** Where it hangs and its name; a unit that hangs nowhere says where it lies. */
export const titleOf = ({ site, point, unit }: UnitFile): string =>
  [site.name, unit.name, point.id === "" && officeWords.inStoreAt(unit.storedAt ?? "")]
    .filter(Boolean)
    .join(", ");

function factsOf({ file, reasons: [first] }: DueRow): LineFacts {
  const last = file.visits.at(-1);
  return {
    ...(first && { first }),
    openPoints: file.openPoints.length,
    ...(last && { lastVisit: last.startedAt ?? "" }),
  };
}

/** Why somebody has to come and when, or when somebody last was. */
export function sayLine(facts: LineFacts, today: string): string {
  const on = dayOfLine(facts);
  const when = on === undefined ? "" : on <= today ? words.since(day(on)) : day(on);
  return joined([[sayWhy(facts), when].filter(Boolean).join(" "), pointsOf(facts)]);
}

/** The same without its day, which is drawn beside it. */
export const sayLineBesideDay = (facts: LineFacts): string => joined([sayWhy(facts), pointsOf(facts)]);

/** The day somebody has to come by; of a visit that is open, none. */
export const dayOfLine = ({ first }: LineFacts): string | undefined =>
  first?.why === "visitOpen" ? undefined : first?.on;

const sayWhy = ({ first, lastVisit }: LineFacts): string =>
  first
    ? messages.dueReason(first)
    : lastVisit === undefined
      ? words.noVisit
      : words.lastVisit(day(lastVisit));

const pointsOf = ({ first, openPoints }: LineFacts): string =>
  openPoints > 0 && first?.why !== "openPoint" ? words.openPoints(openPoints) : "";

const joined = (texts: readonly string[]) => texts.filter(Boolean).join(" · ");
