import type { Kept, UnitFile } from "./book.ts";
import type { Part, PartRole, Phase } from "./kinds.ts";

const day = (iso: string | undefined): string => (iso ?? "").slice(0, 10);

/** Parts of a role that were in the unit at this phase of a visit, in the order of the chain. A part fitted in the visit counts as left, not as found. */
export function partsInService(
  file: Pick<UnitFile, "parts">,
  visit: UnitFile["visits"][number],
  phase: Phase,
  role: PartRole,
): readonly Kept<Part>[] {
  const today = day(visit.startedAt) || "9999";
  return file.parts
    .filter((part) => part.role === role)
    .filter((part) => {
      if (part.fittedVisit === visit.id && visit.kind !== "commissioning") return phase === "asLeft";
      return day(part.fittedOn) <= today;
    })
    .filter((part) => {
      if (part.removedVisit === visit.id) return phase === "asFound";
      return !part.removedOn || day(part.removedOn) > today;
    })
    .sort((a, b) => (a.position ?? 99) - (b.position ?? 99) || (a.id < b.id ? -1 : 1));
}
