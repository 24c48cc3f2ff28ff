import type { FieldValue, VisitKind } from "@tapside/records";
import type { LiveBook } from "../store/open-book.ts";

/** Opens a visit at a unit, with what is known of it already, and returns its id. */
export function startVisit(
  live: LiveBook,
  unitId: string,
  kind: VisitKind,
  known: Readonly<Record<string, FieldValue>> = {},
): string {
  const { book } = live.snapshot();
  const id = live.newId();
  const technician = book.settings.get("settings")?.technician;
  void live.write("visit", id, {
    unit: unitId,
    point: book.unit.get(unitId)?.point ?? null,
    kind,
    startedAt: new Date().toISOString(),
    technician: technician ?? null,
    ...known,
  });
  return id;
}
