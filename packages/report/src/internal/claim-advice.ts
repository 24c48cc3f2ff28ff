import type { Book } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { ClaimShown } from "./claim-shown.ts";
import { dayOf } from "./day-of.ts";

/** What was advised and decided: RO at a feed that needs none, and the points left open with how they ended. */
export const adviceLines = (book: Book, shown: ClaimShown, words: Messages): readonly string[] => [
  ...shown.visits.flatMap((visit) => {
    const said = visit.answers.roOptional;
    return said ? [`${dayOf(visit.startedAt)}; ${words.record.roOptional(said)}`] : [];
  }),
  ...shown.openPoints.map((point) => {
    const opened = dayOf(book.visit.get(point.openedVisit ?? "")?.startedAt);
    const isSettled = point.closedVisit || point.closedOn || point.refusedBy;
    const settled = isSettled ? words.settledPoint(point) : words.claim.stillOpen;
    return [opened, words.openPoint(point), point.owner, settled].filter(Boolean).join("; ");
  }),
];
