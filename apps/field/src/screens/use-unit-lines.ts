import { todayIso } from "../look/fields/date-field.tsx";
import { useBook } from "../store/use-book.ts";
import { keptUnitLines, type UnitLine } from "./unit-line.ts";

/** One for all screens: whoever comes back to the list finds it as it was. */
const unitLines = keptUnitLines();

/** The due list; only units whose records have changed are judged anew, and typing touches none. */
export function useUnitLines(): readonly UnitLine[] {
  return unitLines(useBook().snapshot.book, todayIso());
}
