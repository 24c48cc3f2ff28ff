import type { UnitFile } from "@tapside/records";
import { confirmedIn } from "./answers-of.ts";
import { caseFromFile } from "./case-from-file.ts";
import type { CauseId } from "./causes.ts";
import { loadEngine } from "./engine.ts";
import { expectationOf } from "./expectation.ts";
import type { CompanyCounts } from "./frequencies.ts";
import { odds } from "./odds.ts";
import { assumedWith } from "./posterior.ts";

/** A cause that was put right and confirmed, and what the odds said of it from the readings as found. */
export interface SaidAndFound {
  readonly visit: string;
  readonly technician: string;
  readonly found: CauseId;
  readonly saidFirst: CauseId;
  /** 1: it was named first. */
  readonly place: number;
  /** Probability the odds gave it. */
  readonly probability: number;
}

/** Nothing to repair: named beside a fault it stands in nobody's way. */
const NO_FAULT: ReadonlySet<CauseId> = new Set(["healthy", "coldWater"]);

/** Every confirmed cause of the closed visits, oldest first, beside what the same readings say by today's weights. Those that cannot be judged are left out. */
export async function saidAndFound(
  files: readonly UnitFile[],
  counts: CompanyCounts | undefined,
): Promise<readonly SaidAndFound[]> {
  const visits = files
    .flatMap((file) => file.visits.map((visit) => ({ file, visit })))
    .filter(({ visit }) => visit.closed && confirmedIn({ visit }).length > 0);
  if (visits.length === 0) return [];
  const engine = await loadEngine();
  const assumed = assumedWith(counts);
  return visits
    .sort((a, b) => ((a.visit.startedAt ?? "") < (b.visit.startedAt ?? "") ? -1 : 1))
    .flatMap(({ file, visit }) => {
      const asFound = caseFromFile(file, visit.id);
      if (asFound.kind !== "known") return [];
      const { causes } = odds(engine, expectationOf(asFound.value.scene), asFound.value.readings, assumed);
      return confirmedIn({ visit }).map((found): SaidAndFound => {
        const wrong = causes.filter(({ cause }) => cause === found || !NO_FAULT.has(cause));
        const place = wrong.findIndex(({ cause }) => cause === found);
        return {
          visit: visit.id,
          technician: visit.technician ?? "",
          found,
          saidFirst: wrong[0]!.cause,
          place: place + 1,
          probability: wrong[place]!.probability,
        };
      });
    });
}
