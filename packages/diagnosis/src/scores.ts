import { brier } from "./brier.ts";
import { CAUSE_IDS, CAUSES, type CauseId } from "./causes.ts";
import { donorBank } from "./donors.ts";
import type { Engine } from "./engine.ts";
import { minutesOf, nextTests } from "./next-test.ts";
import { canMeet, OFTEN_TOGETHER } from "./pairs.ts";
import { ALTERED, type Alteration, AS_MODELLED } from "./population.ts";
import { type Assumed, posterior, usualAssumed } from "./posterior.ts";
import { drawIndex, type Random, seededRandom } from "./random.ts";
import { REPAIRS } from "./repairs.ts";
import type { Readings } from "./signs.ts";
import { type SimulatedCase, simulateCase } from "./simulate-case.ts";
import { type SetUpId, TESTS, type Test, type TestId } from "./test-catalogue.ts";

/** A share with its 95 % interval. */
export interface Share {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly of: number;
}

/**
 * A share of `hits` in `of` with its 95 % interval.
 *
 * Formula: score interval, z = 1.96
 * Source: Wilson (1927), textbook.
 * Range: independent cases.
 * Error: none beyond the normal approximation.
 * @example
 * ```ts
 * import { shareOf } from "@tapside/diagnosis";
 * shareOf(45, 50).low; // => 0.786
 * ```
 */
export function shareOf(hits: number, of: number): Share {
  if (of === 0) return { value: 0, low: 0, high: 1, of };
  const z = 1.96;
  const p = hits / of;
  const middle = p + (z * z) / (2 * of);
  const half = z * Math.sqrt((p * (1 - p)) / of + (z * z) / (4 * of * of));
  const scale = 1 + (z * z) / of;
  return { value: p, low: (middle - half) / scale, high: (middle + half) / scale, of };
}

export interface OddsScore {
  readonly cases: number;
  readonly top1: Share;
  readonly top3: Share;
  readonly sameRepair: Share;
  readonly rightWhenSure: Share;
  readonly calibrationError: number;
  readonly brier: number;
  readonly logScore: number;
  readonly recall: Readonly<Partial<Record<CauseId, Share>>>;
}

/** Everything that can be read at this unit. */
export function allReadings(one: SimulatedCase): Readings {
  if (one.scene.unit.booster) return one.readings;
  const { elementPressure: _, ...rest } = one.readings;
  return rest;
}

interface Judged {
  readonly truth: number;
  readonly p: Float64Array;
}

/** Scores of probabilities against what was simulated. Calibration error over ten equal bins of the first cause's probability. */
function scoreOf(judged: readonly Judged[]): OddsScore {
  const bins = Array.from({ length: 10 }, () => ({ said: 0, right: 0 }));
  const recall = new Map<number, { hits: number; of: number }>();
  const sum = { top1: 0, top3: 0, repair: 0, sure: 0, sureRight: 0, brier: 0, log: 0 };
  for (const { truth, p } of judged) {
    const order = [...p.keys()].sort((a, b) => p[b]! - p[a]!);
    const first = order[0]!;
    const right = Number(first === truth);
    sum.top1 += right;
    sum.top3 += Number(order.slice(0, 3).includes(truth));
    sum.repair += Number(sameRepair(CAUSE_IDS[first]!, CAUSE_IDS[truth]!));
    sum.sure += Number(p[first]! >= 0.9);
    sum.sureRight += p[first]! >= 0.9 ? right : 0;
    sum.brier += brier(p, truth);
    sum.log -= Math.log(Math.max(1e-12, p[truth]!));
    const bin = bins[Math.min(9, Math.floor(p[first]! * 10))]!;
    bin.said += p[first]!;
    bin.right += right;
    const own = recall.get(truth) ?? { hits: 0, of: 0 };
    recall.set(truth, { hits: own.hits + right, of: own.of + 1 });
  }
  const n = judged.length;
  return {
    cases: n,
    top1: shareOf(sum.top1, n),
    top3: shareOf(sum.top3, n),
    sameRepair: shareOf(sum.repair, n),
    rightWhenSure: shareOf(sum.sureRight, sum.sure),
    calibrationError: bins.reduce((total, { said, right }) => total + Math.abs(said - right), 0) / n,
    brier: sum.brier / n,
    logScore: sum.log / n,
    recall: Object.fromEntries([...recall].map(([i, { hits, of }]) => [CAUSE_IDS[i], shareOf(hits, of)])),
  };
}

/** Two causes are put right alike when they take the same parts, and take some. */
function sameRepair(a: CauseId, b: CauseId): boolean {
  const parts = REPAIRS[a].parts.join();
  return a === b || (parts !== "" && parts === REPAIRS[b].parts.join());
}

/** Which causes a score is about. */
export type Catalogue = "studied" | "whole";

const weightsOf = (catalogue: Catalogue): readonly number[] =>
  CAUSE_IDS.map((id) => (catalogue === "studied" && !CAUSES[id].studied ? 0 : CAUSES[id].weight));

export const oneCauseOf = (catalogue: Catalogue): Assumed => ({
  ...usualAssumed,
  two: 0,
  considered: weightsOf(catalogue).map((weight) => Number(weight > 0)),
});

function drawCase(random: Random, catalogue: Catalogue, altered: Alteration) {
  const truth = drawIndex(random, weightsOf(catalogue));
  return { truth, one: simulateCase([CAUSE_IDS[truth]!], random, altered) };
}

export interface ScorePlan {
  readonly cases: number;
  readonly seed: number;
  readonly altered: boolean;
}

const alterationOf = (plan: ScorePlan): Alteration => (plan.altered ? ALTERED : AS_MODELLED);

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

export interface PolicyScore extends OddsScore {
  readonly tests: { readonly median: number; readonly mean: number };
  readonly minutes: { readonly median: number; readonly mean: number };
}

/** A fixed round in the order of hands, as a card would print it. Common practice, no source. */
const CHECKLIST: readonly TestId[] = [
  "lookAtTankValve",
  "lookAtTubing",
  "temperature",
  "staticPressure",
  "beforeFilterPressure",
  "tankFullPressure",
  "drainTankFull",
  "outletFlow",
  "feedTds",
  "deliveredTds",
  "firstDraw",
  "chlorineBefore",
  "chlorineAfter",
  "hardness",
  "permeateTds",
  "permeateFlow",
  "drainFlow",
  "afterFilterPressure",
  "drawOff",
  "bucket",
  "feelAirValve",
  "drainFeedClosed",
  "isolateBypass",
  "tdsStandard",
  "lookAtMeterScale",
  "flushedTds",
  "drainLineOff",
  "airCharge",
  "openHousing",
  "throttledFeed",
  "secondGauge",
  "askDemand",
  "elementPressure",
];

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

/** Two causes that can meet, by their weights; three in ten of those that are often met together. */
export function drawPair(random: Random): readonly CauseId[] {
  if (random() < 0.3) return OFTEN_TOGETHER[Math.floor(random() * OFTEN_TOGETHER.length)]!;
  for (;;) {
    const [a, b] = [0, 1].map(() => CAUSE_IDS[drawIndex(random, weightsOf("whole"))]!) as [CauseId, CauseId];
    if (canMeet(a, b)) return [a, b];
  }
}
