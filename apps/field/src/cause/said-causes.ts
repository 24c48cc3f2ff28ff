import {
  type CauseId,
  caseFromFile,
  countsInBook,
  expectationOf,
  type FileCase,
  frequencies,
  loadEngine,
  odds,
  saidToOwner,
  usualAssumed,
} from "@tapside/diagnosis";
import type { SaidCause } from "@tapside/report";
import { messagesIn } from "@tapside/words/every-language";
import type { OpenVisit } from "../visit/use-visit.ts";
import { answersOf, confirmedIn, repairedIn, testOwed, visitCase } from "./visit-case.ts";

/** Odds from which an unrepaired cause is named at all. */
const NAMED = 0.5;

/** Whether a cause was looked for at this visit. */
const wasSearched = (open: OpenVisit): boolean =>
  Object.keys(answersOf(open)).some((field) => field.startsWith("cause."));

/** What the owner's record says the search ended in: what was put right, else the likeliest cause. Empty when nobody searched. */
export async function saidCauses(open: OpenVisit): Promise<readonly SaidCause[]> {
  const found = wasSearched(open) ? caseFromFile(open.file, open.visit.id) : undefined;
  if (found?.kind !== "known") return [];
  const engine = await loadEngine();
  const counts = countsInBook(open.live.snapshot().book.causeCounts);
  const assumed = { ...usualAssumed, frequencies: frequencies(counts) };
  const oddsAt = ({ scene, readings }: FileCase) => odds(engine, expectationOf(scene), readings, assumed);
  const before = oddsAt(found.value);
  const now = visitCase(open);
  const repaired = repairedIn(open);
  const after =
    repaired.length > 0 && now.kind === "known" && !testOwed(open) ? oddsAt(now.value) : undefined;
  const confirmed = confirmedIn(open);
  const top = before.causes[0];
  const likely = top && top.cause !== "healthy" && top.probability >= NAMED ? [top.cause] : [];
  const { causeNames } = messagesIn(open.file.site.language);
  const causes: readonly CauseId[] = repaired.length > 0 ? repaired : likely;
  return causes.map((cause) => ({
    name: causeNames[cause],
    said: saidToOwner({ cause, before, after, confirmed: confirmed.includes(cause) }),
  }));
}
