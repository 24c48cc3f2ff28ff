import { type DueRow, dueList, ownersOf, searchText } from "@tapside/book";
import type { Book, UnitFile } from "@tapside/records";
import { en } from "@tapside/words";
import { bookWords as words } from "../words/book.ts";
import { officeWords } from "../words/office.ts";
import { day } from "./day.ts";

/** A unit in the list: its line, and the text it is found by. */
export interface UnitLine {
  readonly id: string;
  readonly title: string;
  readonly line: string;
  /** Cannot be moved: its line has an end date. */
  readonly fixed: boolean;
  readonly text: string;
  readonly row: DueRow;
}

/** All units of the book, the most urgent first. `today` is an ISO date. */
export const unitLines = (book: Book, today: string): readonly UnitLine[] => {
  const owners = ownersBySite(book);
  return dueList(book, today).map((row) => lineOf(row, owners.get(row.file.site.id) ?? [], today));
};

function ownersBySite(book: Book): ReadonlyMap<string, readonly string[]> {
  const sites = new Set([...book.ownership.values()].map((one) => one.site ?? ""));
  return new Map([...sites].map((site) => [site, ownersOf(book, site).map((span) => span.owner)]));
}

function lineOf(row: DueRow, owners: readonly string[], today: string): UnitLine {
  const { file } = row;
  return {
    id: row.unit,
    title: titleOf(file),
    line: sayLine(row, today),
    fixed: row.reasons[0]?.why === "bypassEnds" || row.reasons[0]?.why === "loanEnds",
    text: searchText(file, owners),
    row,
  };
}

/** Where it hangs and its name; a unit that hangs nowhere says where it lies. */
export const titleOf = ({ site, point, unit }: UnitFile): string =>
  [site.name, unit.name, point.id === "" && officeWords.inStoreAt(unit.storedAt ?? "")]
    .filter(Boolean)
    .join(", ");

function sayLine({ file, reasons }: DueRow, today: string): string {
  const [first] = reasons;
  const last = file.visits.at(-1);
  const points =
    file.openPoints.length > 0 && first?.why !== "openPoint" ? words.openPoints(file.openPoints.length) : "";
  const when = first?.on === undefined || first.why === "visitOpen" ? "" : whenOf(first.on, today);
  const said = first ? en.dueReason(first) : last ? words.lastVisit(day(last.startedAt)) : words.noVisit;
  return [[said, when].filter(Boolean).join(" "), points].filter(Boolean).join(" · ");
}

const whenOf = (on: string, today: string): string => (on <= today ? words.since(day(on)) : day(on));
