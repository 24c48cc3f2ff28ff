import { CAUSE_IDS, type CauseId, caseFromFile, type FileCase, measuredAgain } from "@tapside/diagnosis";
import type { Outcome } from "@tapside/quantities";
import type { Phase } from "@tapside/records";
import type { OpenVisit } from "../visit/use-visit.ts";

/** Field of the visit's answers that names what was put right. */
export const REPAIRED = "answer:cause.repaired";

/** Answers kept while finding the cause, by their own names. */
export const answersOf = (open: OpenVisit): Readonly<Record<string, unknown>> => open.visit.answers;

export function repairedIn(open: OpenVisit): CauseId | undefined {
  const said = answersOf(open)["cause.repaired"];
  return CAUSE_IDS.find((cause) => cause === said);
}

/** Readings are taken as found until something was put right, as left from then on. */
export const phaseNow = (open: OpenVisit): Phase => (repairedIn(open) ? "asLeft" : "asFound");

/** What the visit knows: as found; after a repair what still holds, with what was measured again. */
export function visitCase(open: OpenVisit): Outcome<FileCase> {
  const found = caseFromFile(open.file, open.visit.id);
  const cause = repairedIn(open);
  if (found.kind !== "known" || !cause) return found;
  const after = caseFromFile(open.file, open.visit.id, "asLeft");
  if (after.kind !== "known") return found;
  const readings = measuredAgain(found.value.readings, cause, after.value.readings);
  return { ...found, value: { scene: { ...found.value.scene, complaint: "routine" }, readings } };
}
