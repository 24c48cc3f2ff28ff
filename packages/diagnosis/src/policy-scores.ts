import { CHECKLIST } from "./checklist.ts";
import { donorBank } from "./donors.ts";
import { alterationOf, drawCase, oneCauseOf, type ScorePlan } from "./drawn-case.ts";
import type { Engine } from "./engine.ts";
import { minutesOf, nextTests } from "./next-test.ts";
import { type OddsScore, scoreOf } from "./odds-score.ts";
import { type Assumed, posterior } from "./posterior.ts";
import { seededRandom } from "./random.ts";
import type { Readings } from "./signs.ts";
import type { SimulatedCase } from "./simulate-case.ts";
import { type SetUpId, TESTS, type Test, type TestId } from "./test-catalogue.ts";

/** Odds where a way of choosing tests stopped, and what it cost. */
export interface PolicyScore extends OddsScore {
  readonly tests: { readonly median: number; readonly mean: number };
  readonly minutes: { readonly median: number; readonly mean: number };
}

type Choose = (readings: Readings, setUps: readonly SetUpId[], done: readonly TestId[]) => TestId | undefined;

/** Takes tests as chosen until sure, or until nothing is left to choose. */
function follow(engine: Engine, one: SimulatedCase, assumed: Assumed, stop: number, choose: Choose) {
  const { expected } = donorBank(one.scene);
  let readings: Readings = {};
  const setUps: SetUpId[] = [];
  const done: TestId[] = [];
  let minutes = 0;
  for (;;) {
    const p = posterior(engine, expected, readings, assumed).single;
    const next = Math.max(...p) >= stop ? undefined : choose(readings, setUps, done);
    if (next === undefined) return { p, minutes, tests: done.length };
    const test: Test = TESTS[next];
    minutes += minutesOf(next, { setUps });
    if (test.setUp && !setUps.includes(test.setUp)) setUps.push(test.setUp);
    done.push(next);
    readings = { ...readings, ...Object.fromEntries(test.signs.map((sign) => [sign, one.readings[sign]])) };
  }
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted.length === 0 ? 0 : sorted[Math.floor((sorted.length - 1) / 2)]!;
};
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
const spanOf = (values: readonly number[]) => ({ median: median(values), mean: mean(values) });

const BITS_WORTH_A_TEST = 0.004;

/** Adaptive choice beside the checklist on the same cases. */
export function scorePolicies(engine: Engine, plan: ScorePlan, stop = 0.9) {
  const random = seededRandom(plan.seed + 1);
  const assumed = oneCauseOf("studied");
  const runs = Array.from({ length: plan.cases }, () => {
    const { truth, one } = drawCase(random, "studied", alterationOf(plan));
    const bank = donorBank(one.scene);
    const adaptive = follow(engine, one, assumed, stop, (readings, setUps, done) => {
      const [best] = nextTests(engine, bank, readings, { setUps, notAgain: done }, assumed);
      return best && best.bits >= BITS_WORTH_A_TEST ? best.test : undefined;
    });
    const possible = CHECKLIST.filter((id) => !one.scene.impossible?.includes(id));
    const checklist = follow(engine, one, assumed, stop, (_, __, done) => possible[done.length]);
    return { truth, adaptive, checklist };
  });
  const scored = (which: "adaptive" | "checklist"): PolicyScore => ({
    ...scoreOf(runs.map((run) => ({ truth: run.truth, p: run[which].p }))),
    tests: spanOf(runs.map((run) => run[which].tests)),
    minutes: spanOf(runs.map((run) => run[which].minutes)),
  });
  const shares = runs.filter((run) => run.checklist.minutes > 0);
  return {
    adaptive: scored("adaptive"),
    checklist: scored("checklist"),
    pairedMinutesShare: median(shares.map((run) => run.adaptive.minutes / run.checklist.minutes)),
  };
}
