import type { KeptVisit } from "@tapside/records";
import { COMPLAINTS, type Complaint } from "./causes.ts";
import { SEARCH } from "./search-answers.ts";

/** What the items of a visit's complaint come down to; those not named here speak of no one complaint. */
const OF_ITEM: Readonly<Record<string, Complaint>> = {
  noWater: "runsOut",
  weak: "runsOut",
  drainRuns: "drainRuns",
  taste: "taste",
  smellChlorine: "taste",
  ice: "taste",
  scale: "highSolids",
};

/**
 * Why somebody called, as the causes know it: what was said in the search for the cause, else what the ticked complaint comes down to when
 * that is one thing. A visit nobody called for is routine; undefined where it cannot be told.
 */
export function complaintOf(visit: Pick<KeptVisit, "answers" | "kind">): Complaint | undefined {
  const said = (visit.answers as Readonly<Record<string, unknown>>)[SEARCH.complaint];
  if (COMPLAINTS.includes(said as Complaint)) return said as Complaint;
  const ticked = new Set((visit.answers.complaint?.items ?? []).flatMap((item) => OF_ITEM[item] ?? []));
  if (ticked.size > 0) return ticked.size === 1 ? [...ticked][0] : undefined;
  return visit.kind && visit.kind !== "callOut" ? "routine" : undefined;
}
