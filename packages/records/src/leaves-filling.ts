import type { KeptVisit } from "./book.ts";
import type { VisitKind } from "./kinds.ts";

const NOTHING_FILLS: ReadonlySet<VisitKind> = new Set(["survey", "shutDown", "removal", "noAccess"]);

/** Whether the tank fills when a visit of this kind ends, so that its shut-off must have been seen or is left open. */
export const leavesFilling = (visit: Pick<KeptVisit, "kind" | "answers">): boolean =>
  !NOTHING_FILLS.has(visit.kind ?? "annual") && visit.answers.noAccess === undefined;
