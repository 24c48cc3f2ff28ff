import {
  CAUSE_IDS,
  type CauseId,
  caseFromFile,
  type FileCase,
  measuredAgain,
  REPAIRS,
  sceneAfterRepairs,
  TESTS,
  type TestId,
} from "@tapside/diagnosis";
import type { Outcome } from "@tapside/quantities";
import type { Phase } from "@tapside/records";
import type { OpenVisit } from "../visit/use-visit.ts";

/** Field of the visit's answers that names what was put right, in the order of hands. */
export const REPAIRED = "answer:cause.repaired";

/** Answers kept while finding the cause, by their own names. */
export const answersOf = (open: OpenVisit): Readonly<Record<string, unknown>> => open.visit.answers;

/** What was put right at this visit, first to last. */
export function repairedIn(open: OpenVisit): readonly CauseId[] {
  const said = answersOf(open)["cause.repaired"];
  const ids = Array.isArray(said) ? said : [said];
  return ids.flatMap((id) => CAUSE_IDS.filter((cause) => cause === id));
}

/** Field of the visit's answers that names what the technician confirms was it. */
export const FOUND = "answer:cause.found";

/** What was put right and then confirmed by the technician. */
export function confirmedIn(open: OpenVisit): readonly CauseId[] {
  const said = answersOf(open)["cause.found"];
  return Array.isArray(said) ? repairedIn(open).filter((cause) => said.includes(cause)) : [];
}

/** Readings are taken as found until something was put right, as left from then on. */
export const phaseNow = (open: OpenVisit): Phase => (repairedIn(open).length > 0 ? "asLeft" : "asFound");

/** The first test a repair asks for that was not taken since; until then its effect is not believed. */
export function testOwed(open: OpenVisit): TestId | undefined {
  const last = repairedIn(open).at(-1);
  const after = last && caseFromFile(open.file, open.visit.id, "asLeft");
  if (after?.kind !== "known") return undefined;
  const isOwed = (test: TestId) => TESTS[test].signs.some((sign) => after.value.readings[sign] === undefined);
  return REPAIRS[last!].measureAgain.find(isOwed);
}

/** What the visit knows: as found; after repairs what still holds, with what was measured again. */
export function visitCase(open: OpenVisit): Outcome<FileCase> {
  const found = caseFromFile(open.file, open.visit.id);
  const repaired = repairedIn(open);
  if (found.kind !== "known" || repaired.length === 0) return found;
  const after = caseFromFile(open.file, open.visit.id, "asLeft");
  if (after.kind !== "known") return found;
  const readings = measuredAgain(found.value.readings, repaired, after.value.readings);
  return { ...found, value: { scene: sceneAfterRepairs(found.value.scene, repaired), readings } };
}
