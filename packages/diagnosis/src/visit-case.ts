import type { Outcome } from "@tapside/quantities";
import type { Phase } from "@tapside/records";
import { answersOf, repairedIn, type VisitOfUnit } from "./answers-of.ts";
import { caseFromFile, type FileCase } from "./case-from-file.ts";
import type { CauseId } from "./causes.ts";
import { measuredAgain } from "./measured-again.ts";
import { REPAIRS } from "./repairs.ts";
import { sceneAfterRepairs } from "./scene-after-repairs.ts";
import { SEARCH } from "./search-answers.ts";
import { TESTS, type TestId } from "./test-catalogue.ts";

/** The answers that say so, with when; the times stay in step with the causes. */
export function repairedAnswers(
  one: VisitOfUnit,
  causes: readonly CauseId[],
  at: string,
): Readonly<Record<string, readonly string[] | null>> {
  const before = timesOf(one);
  const times = causes.map((_, i) => (i < repairedIn(one).length ? (before[i] ?? "") : at));
  return {
    [SEARCH.repaired]: causes.length > 0 ? causes : null,
    [SEARCH.repairedAt]: causes.length > 0 ? times : null,
  };
}

function timesOf(one: VisitOfUnit): readonly string[] {
  const said = answersOf(one)[SEARCH.repairedAt];
  return Array.isArray(said) ? said.map(String) : [];
}

/** When the last repair was done; absent where the visit does not say. */
const lastRepairAt = (one: VisitOfUnit): string | undefined =>
  timesOf(one)[repairedIn(one).length - 1] || undefined;

/** What was read after the last repair: what was read between two no longer speaks of the unit as it is. */
const sinceLastRepair = (one: VisitOfUnit): Outcome<FileCase> =>
  caseFromFile(one.file, one.visit.id, "asLeft", lastRepairAt(one));

/** Readings are taken as found until something was put right, as left from then on. */
export const phaseNow = (one: VisitOfUnit): Phase => (repairedIn(one).length > 0 ? "asLeft" : "asFound");

/** The first test a repair asks for that was not taken since; until then its effect is not believed. */
export function testOwed(one: VisitOfUnit): TestId | undefined {
  const last = repairedIn(one).at(-1);
  const after = last && sinceLastRepair(one);
  if (after?.kind !== "known") return undefined;
  const isOwed = (test: TestId) => TESTS[test].signs.some((sign) => after.value.readings[sign] === undefined);
  return REPAIRS[last!].measureAgain.find(isOwed);
}

/** What the visit knows: as found; after repairs what still holds, with what was measured again. */
export function visitCase(one: VisitOfUnit): Outcome<FileCase> {
  const found = caseFromFile(one.file, one.visit.id);
  const repaired = repairedIn(one);
  if (found.kind !== "known" || repaired.length === 0) return found;
  const after = sinceLastRepair(one);
  if (after.kind !== "known") return found;
  const readings = measuredAgain(found.value.readings, repaired, after.value.readings);
  return { ...found, value: { scene: sceneAfterRepairs(found.value.scene, repaired), readings } };
}
