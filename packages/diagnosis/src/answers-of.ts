import type { KeptVisit, UnitFile } from "@tapside/records";
import { CAUSE_IDS, type CauseId } from "./causes.ts";
import { SEARCH } from "./search-answers.ts";

/** A visit with the file of its unit. */
export interface VisitOfUnit {
  readonly file: UnitFile;
  readonly visit: KeptVisit;
}

/** Answers kept while finding the cause, by their own names. */
export const answersOf = ({ visit }: Pick<VisitOfUnit, "visit">): Readonly<Record<string, unknown>> =>
  visit.answers;

/** What was put right at this visit, first to last. */
export function repairedIn(one: Pick<VisitOfUnit, "visit">): readonly CauseId[] {
  const said = answersOf(one)[SEARCH.repaired];
  const ids = Array.isArray(said) ? said : [said];
  return ids.flatMap((id) => CAUSE_IDS.filter((cause) => cause === id));
}

/** What was put right and then confirmed by the technician. */
export function confirmedIn(one: Pick<VisitOfUnit, "visit">): readonly CauseId[] {
  const said = answersOf(one)[SEARCH.found];
  return Array.isArray(said) ? repairedIn(one).filter((cause) => said.includes(cause)) : [];
}
