import { useMemo } from "react";
import { todayIso } from "../look/fields/date-field.tsx";
import { useBook } from "../store/use-book.ts";
import { type UnitLine, unitLines } from "./unit-line.ts";

/** The due list, made anew only when a shelf it stands on has changed; typing does not touch it. */
export function useUnitLines(): readonly UnitLine[] {
  const { book } = useBook().snapshot;
  const { site, point, unit, part, visit, openPoint, appliance, move, ownership } = book;
  const today = todayIso();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the shelves the list stands on, not the whole book
  return useMemo(
    () => unitLines(book, today),
    [site, point, unit, part, visit, openPoint, appliance, move, ownership, today],
  );
}
