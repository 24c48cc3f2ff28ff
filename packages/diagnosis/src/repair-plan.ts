import type { CauseId } from "./causes.ts";
import { leastExpectedTime } from "./least-expected-time.ts";
import type { Odds } from "./odds.ts";
import { type CautionId, type PartId, REPAIRS } from "./repairs.ts";
import type { TestId } from "./test-catalogue.ts";

export interface RepairStep {
  readonly cause: CauseId;
  readonly probability: number;
  readonly parts: readonly PartId[];
  readonly minutes: number;
  readonly cautions: readonly CautionId[];
  readonly measureAgain: readonly TestId[];
  /** Causes that must be put right, or ruled out, before this step. */
  readonly first: readonly CauseId[];
}

export interface RepairPlan {
  /** In the order of hands. */
  readonly steps: readonly RepairStep[];
  readonly parts: readonly PartId[];
  readonly minutes: number;
}

/** Causes worth a repair from here on, and how likely one that would spoil it may be before it has to be looked at first. */
const WORTH = 0.3;
const MUST_RULE_OUT = 0.1;

function stepOf(cause: CauseId, odds: ReadonlyMap<CauseId, number>): RepairStep {
  const { parts, minutes, cautions, measureAgain, afterRepairing } = REPAIRS[cause];
  const first = afterRepairing.filter((other) => (odds.get(other) ?? 0) > MUST_RULE_OUT);
  return { cause, probability: odds.get(cause) ?? 0, parts, minutes, cautions, measureAgain, first };
}

/** Steps whose forerunners are in the plan come after them; otherwise the likelier and quicker come first. */
function inOrder(steps: readonly RepairStep[]): readonly RepairStep[] {
  const left = [...steps].sort((a, b) => cost(a) - cost(b));
  const done: RepairStep[] = [];
  while (left.length > 0) {
    const at = left.findIndex(
      (step) => !step.first.some((cause) => left.some((other) => other.cause === cause)),
    );
    done.push(...left.splice(Math.max(at, 0), 1));
  }
  return done;
}

const cost = (step: RepairStep): number => leastExpectedTime(step.minutes + 1, step.probability);

/** What to put right, in which order, with which parts and cautions, and what to measure again. */
export function repairPlan(odds: Odds): RepairPlan {
  const byCause = new Map(odds.causes.map(({ cause, probability }) => [cause, probability]));
  const worth = odds.causes.filter(({ cause, probability }) => cause !== "healthy" && probability >= WORTH);
  const steps = inOrder(worth.map(({ cause }) => stepOf(cause, byCause)));
  return {
    steps,
    parts: [...new Set(steps.flatMap((step) => step.parts))],
    minutes: steps.reduce((sum, step) => sum + step.minutes, 0),
  };
}
