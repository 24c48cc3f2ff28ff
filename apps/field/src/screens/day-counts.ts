import { carryList, plannedFor } from "@tapside/book";
import type { Book } from "@tapside/records";
import type { UnitLine } from "./unit-line.ts";

/** How many visits are planned for a day and how many parts to load for them. */
export function dayCounts(book: Book, lines: readonly UnitLine[], today: string) {
  const planned = new Set(plannedFor(book, today).map((plan) => plan.unit));
  const rows = lines.filter((line) => planned.has(line.id)).map((line) => line.row);
  const parts = carryList(rows, today).reduce((sum, line) => sum + line.count, 0);
  return { today, planned: planned.size, parts };
}
