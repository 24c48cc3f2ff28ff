import { answersOf, confirmedIn, repairedIn, type VisitOfUnit } from "./answers-of.ts";
import { caseFromFile, type FileCase } from "./case-from-file.ts";
import type { CauseId } from "./causes.ts";
import { loadEngine } from "./engine.ts";
import { expectationOf } from "./expectation.ts";
import { fitCauses } from "./fit-cause.ts";
import type { CompanyCounts } from "./frequencies.ts";
import { odds } from "./odds.ts";
import { assumedWith } from "./posterior.ts";
import { type Said, saidToOwner } from "./said-to-owner.ts";
import { type Measured, SIZE_KNOWN_WITHIN, sizeOfCause } from "./size-of-cause.ts";
import { testOwed, visitCase } from "./visit-case.ts";

/** Odds from which an unrepaired cause is named at all. */
const NAMED = 0.5;

/** Whether a cause was looked for at this visit. */
const wasSearched = (one: VisitOfUnit): boolean =>
  Object.keys(answersOf(one)).some((field) => field.startsWith("cause."));

export interface SaidOfCause {
  readonly cause: CauseId;
  readonly said: Said;
  /** How large it was as found, each with its 95 % interval; empty where it was not confirmed or its size is not known. */
  readonly measures: readonly Measured[];
}

function measuresOf(causes: readonly CauseId[], { scene, readings }: FileCase) {
  if (causes.length === 0) return () => [];
  const fit = fitCauses(scene, causes, readings);
  return (cause: CauseId): readonly Measured[] => {
    const size = sizeOfCause(cause, fit, scene);
    return size && size.uShare <= SIZE_KNOWN_WITHIN ? size.measures : [];
  };
}

/** What the owner's record says the search ended in: what was put right, else the likeliest cause. Empty when nobody searched. */
export async function saidCauses(
  one: VisitOfUnit,
  counts: CompanyCounts | undefined,
): Promise<readonly SaidOfCause[]> {
  const found = wasSearched(one) ? caseFromFile(one.file, one.visit.id) : undefined;
  if (found?.kind !== "known") return [];
  const engine = await loadEngine();
  const assumed = assumedWith(counts);
  const oddsAt = ({ scene, readings }: FileCase) => odds(engine, expectationOf(scene), readings, assumed);
  const before = oddsAt(found.value);
  const now = visitCase(one);
  const repaired = repairedIn(one);
  const after = repaired.length > 0 && now.kind === "known" && !testOwed(one) ? oddsAt(now.value) : undefined;
  const confirmed = confirmedIn(one);
  const top = before.causes[0];
  const likely = top && top.cause !== "healthy" && top.probability >= NAMED ? [top.cause] : [];
  const causes = repaired.length > 0 ? repaired : likely;
  const said = causes.map((cause) => ({
    cause,
    said: saidToOwner({ cause, before, after, confirmed: confirmed.includes(cause) }),
  }));
  const isSized = (of: (typeof said)[number]) => of.said !== "notConfirmed";
  const sized = said.filter(isSized).map(({ cause }) => cause);
  const measures = measuresOf(sized, found.value);
  return said.map((of) => ({ ...of, measures: isSized(of) ? measures(of.cause) : [] }));
}
