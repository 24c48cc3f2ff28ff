import type { LiveBook } from "../store/open-book.ts";
import { type NumberSpec, shownIn } from "./read-number.ts";

const PREFERENCES = "preferences";

export const rememberUnit = (live: LiveBook, field: string, unit: string) =>
  void live.write("draft", PREFERENCES, { [`unit:${field}`]: unit }, { undoable: false });

/** The unit last used for this entry, else the pressure unit of the settings, else the one its number is shortest in: most likely that of the plate. */
export function firstUnit(
  live: LiveBook,
  spec: NumberSpec & { readonly field: string },
  value: unknown,
  pressureUnit: string | undefined,
): string {
  const asked = [live.field(PREFERENCES, `unit:${spec.field}`), pressureUnit];
  const wanted = asked.find((unit) => spec.units.includes(String(unit)));
  if (wanted !== undefined) return String(wanted);
  const kept = typeof value === "number" ? value : undefined;
  const digits = (unit: string) => shownIn(kept, spec.baseUnit, unit).length;
  return [...spec.units].sort((a, b) => digits(a) - digits(b))[0] ?? spec.baseUnit;
}
