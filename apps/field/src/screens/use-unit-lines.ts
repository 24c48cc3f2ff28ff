import type { Book } from "@tapside/records";
import { todayIso } from "../look/fields/date-field.tsx";
import { pause } from "../store/pause.ts";
import { useBook } from "../store/use-book.ts";
import { keptUnitLines, type UnitLine } from "./unit-line.ts";

/** One for all screens: whoever comes back to the list finds it as it was. */
const kept = keptUnitLines();

export const linesNow = (book: Book): readonly UnitLine[] => kept.lines(book, todayIso());

/** The due list; only units whose records have changed are judged anew, and typing touches none. */
export const useUnitLines = (): readonly UnitLine[] => linesNow(useBook().snapshot.book);

/** Works the due list out without holding the page up. */
export async function prepareLines(book: Book): Promise<void> {
  for (const _ of kept.stretches(book, todayIso())) await pause();
}
