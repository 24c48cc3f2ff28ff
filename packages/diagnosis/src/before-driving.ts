import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import type { KeptVisit, UnitFile } from "@tapside/records";
import { caseFromFile } from "./case-from-file.ts";
import { loadEngine } from "./engine.ts";
import { expectationOf } from "./expectation.ts";
import type { CompanyCounts } from "./frequencies.ts";
import { type CauseOdds, odds } from "./odds.ts";
import { assumedWith } from "./posterior.ts";
import { type WantedPart, wantedOverStops } from "./wanted-over-stops.ts";

/** What a kitchen said, before anything is read. */
export interface SaidByKitchen {
  /** ISO instant. */
  readonly at: string;
  /** Items of the visit's complaint. */
  readonly items: readonly string[];
}

export interface BeforeDriving {
  /** Likeliest first. */
  readonly causes: readonly CauseOdds[];
  /** Parts their repairs take, likeliest first. */
  readonly parts: readonly WantedPart[];
}

/** Less likely than this is not said before anything is read: common practice, no source. */
const WORTH_SAYING = 0.05;

/** The causes that are worth saying before anything is read. */
export const worthSaying = (causes: BeforeDriving["causes"]): BeforeDriving["causes"] =>
  causes.filter(({ probability }) => probability >= WORTH_SAYING);

/** The visit that would begin with it, nothing read. */
const visitOf = (file: UnitFile, said: SaidByKitchen): KeptVisit => ({
  id: "before-driving",
  unit: file.unit.id,
  kind: "callOut",
  startedAt: said.at,
  readings: { asFound: {}, asLeft: {} },
  answers: { complaint: { items: said.items } },
  exceptions: {},
  work: {},
  photos: {},
  skipped: [],
});

/** Odds over causes from what the kitchen says, the ages of the parts and what the unit read before; and what to load for them. */
export async function beforeDriving(
  file: UnitFile,
  said: SaidByKitchen,
  counts: CompanyCounts | undefined,
): Promise<Outcome<BeforeDriving>> {
  const engine = await loadEngine();
  const visit = visitOf(file, said);
  return mapOutcome(caseFromFile({ ...file, visits: [...file.visits, visit] }, visit.id), (found) => {
    const { causes } = odds(engine, expectationOf(found.scene), found.readings, assumedWith(counts));
    return known({ causes, parts: wantedOverStops([{ causes, fitted: new Set() }]) });
  });
}
