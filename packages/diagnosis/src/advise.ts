import type { CauseId } from "./causes.ts";
import type { DonorBank } from "./donors.ts";
import type { Engine } from "./engine.ts";
import { type Hour, nextTests, type TestProposal } from "./next-test.ts";
import { type Odds, odds } from "./odds.ts";
import { type Assumed, usualAssumed } from "./posterior.ts";
import { type RepairPlan, repairPlan } from "./repair-plan.ts";
import { REPAIRS } from "./repairs.ts";
import type { Readings } from "./signs.ts";

/** Sure enough to repair; dear repairs want more. */
export const SURE = { usual: 0.9, dear: 0.95 } as const;
/** Bits below which a test is not worth taking. */
const TELLS_NOTHING = 0.004;

export type Step =
  /** Take this test next. */
  | { readonly kind: "test"; readonly proposal: TestProposal }
  /** Put this right, then measure again. */
  | { readonly kind: "repair"; readonly cause: CauseId; readonly sure: boolean }
  /** Nothing is wrong that I know of. */
  | { readonly kind: "sound" }
  /** No reading that can be taken here separates these any further. */
  | { readonly kind: "notSeparable"; readonly causes: readonly CauseId[] };

export interface Advice {
  readonly odds: Odds;
  readonly step: Step;
  /** Every test that can still be done, the best first. */
  readonly tests: readonly TestProposal[];
  readonly plan: RepairPlan;
}

/** From the readings so far to the next step: test, repair, or stop. */
export function advise(
  engine: Engine,
  bank: DonorBank,
  readings: Readings,
  hour: Hour = {},
  assumed: Assumed = usualAssumed,
): Advice {
  const found = odds(engine, bank.expected, readings, assumed);
  const tests = nextTests(engine, bank, readings, hour, assumed);
  const plan = repairPlan(found);
  return { odds: found, step: inOrderOf(plan, stepOf(found, tests)), tests, plan };
}

/** A repair that would be spoilt by another cause waits for that one: carbon before a new element. */
function inOrderOf(plan: RepairPlan, step: Step): Step {
  if (step.kind !== "repair") return step;
  const planned = plan.steps.find(({ cause }) => cause === step.cause);
  const before = plan.steps.find(({ cause }) => planned?.first.includes(cause));
  return before ? { ...step, cause: before.cause } : step;
}

function stepOf(found: Odds, tests: readonly TestProposal[]): Step {
  const [top] = found.causes;
  const best = tests[0];
  const canTell = best !== undefined && best.bits >= TELLS_NOTHING;
  if (!top) return { kind: "sound" };
  const repair = REPAIRS[top.cause];
  const level = repair.dear ? SURE.dear : SURE.usual;
  if (top.probability >= level)
    return top.cause === "healthy" ? { kind: "sound" } : { kind: "repair", cause: top.cause, sure: true };
  if (canTell && !quicker(top.probability, repair.minutes, best)) return { kind: "test", proposal: best };
  if (top.cause !== "healthy" && (canTell || top.probability >= 0.6))
    return { kind: "repair", cause: top.cause, sure: false };
  return { kind: "notSeparable", causes: found.causes.slice(0, 3).map(({ cause }) => cause) };
}

/** Repairing is the better test when it is likely to end the search in less time than the best test takes. */
const quicker = (probability: number, minutes: number, best: TestProposal): boolean =>
  probability >= 0.5 && minutes <= best.minutes && minutes <= 2;
