import { CAUSE_IDS } from "./causes.ts";
import { donorBank } from "./donors.ts";
import {
  allReadings,
  alterationOf,
  type Catalogue,
  drawCase,
  drawPair,
  oneCauseOf,
  type ScorePlan,
} from "./drawn-case.ts";
import type { Engine } from "./engine.ts";
import { type OddsScore, scoreOf } from "./odds-score.ts";
import { posterior } from "./posterior.ts";
import { seededRandom } from "./random.ts";
import { type Share, shareOf } from "./share-of.ts";
import { simulateCase } from "./simulate-case.ts";

/** Simulated visits with one cause and every test taken. */
export function scoreAllTests(engine: Engine, plan: ScorePlan, catalogue: Catalogue): OddsScore {
  const random = seededRandom(plan.seed);
  const assumed = oneCauseOf(catalogue);
  return scoreOf(
    Array.from({ length: plan.cases }, () => {
      const { truth, one } = drawCase(random, catalogue, alterationOf(plan));
      const { expected } = donorBank(one.scene);
      return { truth, p: posterior(engine, expected, allReadings(one), assumed).single };
    }),
  );
}

/** How often two causes at once are found. */
export interface PairScore {
  readonly cases: number;
  readonly oneInFirstThree: Share;
  readonly bothNamed: Share;
}

/** Visits with two causes, all tests taken; "both named": they are the two likeliest. */
export function scorePairs(engine: Engine, plan: ScorePlan): PairScore {
  const random = seededRandom(plan.seed + 2);
  let one = 0;
  let both = 0;
  for (let n = 0; n < plan.cases; n++) {
    const causes = drawPair(random);
    const simulated = simulateCase(causes, random, alterationOf(plan));
    const { expected } = donorBank(simulated.scene);
    const { present } = posterior(engine, expected, allReadings(simulated));
    const order = [...present.keys()].sort((a, b) => present[b]! - present[a]!).map((i) => CAUSE_IDS[i]!);
    one += Number(causes.some((cause) => order.slice(0, 3).includes(cause)));
    both += Number(causes.every((cause) => order.slice(0, 2).includes(cause)));
  }
  return {
    cases: plan.cases,
    oneInFirstThree: shareOf(one, plan.cases),
    bothNamed: shareOf(both, plan.cases),
  };
}
