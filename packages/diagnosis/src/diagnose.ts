import { advise, type Step } from "./advise.ts";
import type { DonorBank } from "./donors.ts";
import type { Engine } from "./engine.ts";
import { type Hour, type Meaning, meaningsOf, type TestProposal } from "./next-test.ts";
import { type CauseOdds, type Evidence, evidenceFor, type PairOdds } from "./odds.ts";
import { type Assumed, usualAssumed } from "./posterior.ts";
import type { RepairPlan } from "./repair-plan.ts";
import type { Readings } from "./signs.ts";

/** What is told to a technician: the likely causes with what speaks for and against, the next step, the plan. */
export interface Diagnosis {
  readonly causes: readonly (CauseOdds & { readonly evidence: readonly Evidence[] })[];
  readonly two: number;
  readonly pairs: readonly PairOdds[];
  readonly step: Step;
  /** What each outcome of the next test would mean; empty where the next step is no test. */
  readonly meanings: readonly Meaning[];
  readonly tests: readonly TestProposal[];
  readonly plan: RepairPlan;
}

/** Causes worth a line. */
const MOST_SHOWN = 5;
const WORTH_SHOWING = 0.02;

/** The whole answer to one visit's readings; the same on the phone and on the command line. */
export function diagnose(
  engine: Engine,
  bank: DonorBank,
  readings: Readings,
  hour: Hour = {},
  assumed: Assumed = usualAssumed,
): Diagnosis {
  const { odds, step, tests, plan } = advise(engine, bank, readings, hour, assumed);
  const likely = odds.causes
    .filter(({ probability }, at) => at === 0 || probability >= WORTH_SHOWING)
    .slice(0, MOST_SHOWN);
  const ids = likely.map(({ cause }) => cause);
  const evidence = evidenceFor(ids, engine, bank.expected, readings, assumed);
  return {
    causes: likely.map((one, i) => ({ ...one, evidence: evidence[i]! })),
    two: odds.two,
    pairs: odds.pairs.filter(({ probability }) => probability >= WORTH_SHOWING),
    step,
    meanings: step.kind === "test" ? meaningsOf(step.proposal.test, engine, bank, readings, assumed) : [],
    tests,
    plan,
  };
}
