import type { UnitFile, VisitKind } from "@tapside/records";

/** The kind of visit the history asks for: one shut down is restarted, else the annual one. */
export function proposedKind(file: UnitFile): VisitKind {
  const last = file.visits.findLast((visit) => visit.kind !== "noAccess" && visit.kind !== "survey");
  return last?.kind === "shutDown" ? "restart" : "annual";
}

const FIRST: Readonly<Partial<Record<VisitKind, string>>> = {
  survey: "check/premises",
  noAccess: "noAccess",
};

/** Where a visit of this kind begins. */
export const firstPathOf = (kind: VisitKind): string => FIRST[kind] ?? "ask";
