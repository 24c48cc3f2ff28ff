import { CAUSE_IDS, type CauseId } from "./causes.ts";
import { type DonorBank, nearnessTo } from "./donors.ts";
import type { Engine } from "./engine.ts";
import { type Outlook, settledBits } from "./information.ts";
import { type Assumed, type Posterior, usualAssumed } from "./posterior.ts";
import type { Readings } from "./signs.ts";
import {
  SET_UPS,
  type SetUpId,
  TEST_IDS,
  TESTS,
  type Test,
  type TestId,
  type Tool,
} from "./test-catalogue.ts";
import { type WhatIf, whatIf } from "./what-if.ts";

/** The state of the hour: what makes a test cheap, dear or impossible. */
export interface Hour {
  readonly setUps?: readonly SetUpId[];
  readonly kitchenBusy?: boolean;
  /** Tools in the van; all when absent. */
  readonly tools?: readonly Tool[];
  /** Tests not wanted again: done, refused, or marked doubtful and left. */
  readonly notAgain?: readonly TestId[];
}

export interface TestProposal {
  readonly test: TestId;
  /** Expected information, bits. */
  readonly bits: number;
  readonly minutes: number;
  readonly setUp?: SetUpId;
}

/** A busy kitchen makes a test that takes its water four times as dear. */
const BUSY = 4;
const K = CAUSE_IDS.length;

export function minutesOf(id: TestId, hour: Hour): number {
  const test: Test = TESTS[id];
  const setUp = test.setUp && !hour.setUps?.includes(test.setUp) ? SET_UPS[test.setUp] : 0;
  return test.minutes + setUp;
}

function isPossible(id: TestId, bank: DonorBank, readings: Readings, hour: Hour): boolean {
  const test: Test = TESTS[id];
  if (hour.notAgain?.includes(id) || bank.expected.scene.impossible?.includes(id)) return false;
  if (test.tool && hour.tools && !hour.tools.includes(test.tool)) return false;
  return test.signs.some((sign) => readings[sign] === undefined);
}

interface Weighted {
  readonly readings: Required<Readings>;
  readonly weight: number;
}

/** Simulated visits of one hypothesis: many of the likely ones, a few of the others. */
const donorCount = (probability: number) => Math.max(4, Math.min(14, Math.ceil(24 * Math.sqrt(probability))));

/** Simulated visits alike to this one, in proportion to the odds of what is at work in them. */
function alike(bank: DonorBank, result: Posterior, readings: Readings): readonly Weighted[] {
  const nearness = nearnessTo(readings, bank.expected);
  return hypotheses(result).flatMap(({ causes, probability }) => {
    const donors = bank.donors(causes, readings, donorCount(probability));
    const near = donors.map((donor) => nearness(donor) + 1e-12);
    const sum = near.reduce((total, one) => total + one, 0);
    return donors.map((donor, i) => ({ readings: donor.readings, weight: (probability * near[i]!) / sum }));
  });
}

function hypotheses(result: Posterior): { causes: readonly CauseId[]; probability: number }[] {
  const singles = CAUSE_IDS.map((cause, i) => ({
    causes: [cause],
    probability: (1 - result.two) * result.single[i]!,
  }));
  const pairs: { causes: readonly CauseId[]; probability: number }[] = [];
  if (result.two > 0.05)
    result.pairs.forEach((p, at) => {
      if (p * result.two > 0.03)
        pairs.push({
          causes: [CAUSE_IDS[Math.floor(at / K)]!, CAUSE_IDS[at % K]!],
          probability: result.two * p,
        });
    });
  return [...singles, ...pairs]
    .filter((one) => one.probability > 0.01)
    .sort((a, b) => b.probability - a.probability)
    .slice(0, 10);
}

/** Spread over the whole weight, so that likely and unlikely outcomes both speak. */
function pick(donors: readonly Weighted[], count: number): readonly Weighted[] {
  const total = donors.reduce((sum, one) => sum + one.weight, 0);
  const picked = new Map<Weighted, number>();
  let sum = 0;
  let next = 0.5;
  for (const donor of donors) {
    sum += (donor.weight / total) * count;
    while (next < sum) {
      picked.set(donor, (picked.get(donor) ?? 0) + 1 / count);
      next++;
    }
  }
  return [...picked].map(([donor, weight]) => ({ readings: donor.readings, weight }));
}

/** Every test is tried on a few outcomes, the most promising on more. */
const FEW = 5;
const MANY = 14;
const PROMISING = 8;

/**
 * Every test that can be done, the most information per minute first. Tests of one set-up are weighed together: what is prepared once
 * serves them all.
 *
 * Formula: bits of `settledBits` a minute, outcomes from simulated visits to this unit, weighed by their likeness to the readings taken
 * Source: choosing the measurement of least expected entropy: de Kleer and Williams, Diagnosing multiple faults (1987).
 * Range: one step ahead.
 * Error: the outcomes are samples: close proposals may change places.
 */
export function nextTests(
  engine: Engine,
  bank: DonorBank,
  readings: Readings,
  hour: Hour = {},
  assumed: Assumed = usualAssumed,
): readonly TestProposal[] {
  const ask = whatIf(engine, bank.expected, readings, assumed);
  const near = alike(bank, ask.now, readings);
  const propose = (tests: readonly TestId[], count: number) => {
    const outcomes = pick(near, count);
    return tests.map((test): TestProposal => {
      const bits = settledBits(ask.now.present, outlooks(ask, test, outcomes));
      const { setUp } = TESTS[test] as Test;
      return { test, bits: Math.max(0, bits), minutes: minutesOf(test, hour), ...(setUp && { setUp }) };
    });
  };
  const rough = ranked(
    propose(
      TEST_IDS.filter((id) => isPossible(id, bank, readings, hour)),
      FEW,
    ),
    hour,
  );
  const better = propose(
    rough.slice(0, PROMISING).map(({ test }) => test),
    MANY,
  );
  return [...ranked(better, hour), ...rough.slice(PROMISING)];
}

const ranked = (proposals: readonly TestProposal[], hour: Hour): readonly TestProposal[] =>
  [...proposals].sort((a, b) => worth(b, proposals, hour) - worth(a, proposals, hour));

function outlooks(ask: WhatIf, test: TestId, outcomes: readonly Weighted[]): readonly Outlook[] {
  const after = ask.after(TESTS[test].signs);
  return outcomes.map(({ weight, readings }) => ({ weight, odds: after(readings) }));
}

/** Bits a minute; a set-up is shared with the best other test that needs it. */
function worth(one: TestProposal, all: readonly TestProposal[], hour: Hour): number {
  const test: Test = TESTS[one.test];
  const dear = test.disturbsKitchen && hour.kitchenBusy ? BUSY : 1;
  const alone = one.bits / (one.minutes * dear);
  if (!one.setUp || hour.setUps?.includes(one.setUp)) return alone;
  const shared = all
    .filter((other) => other.setUp === one.setUp && other !== one)
    .map((other) => (one.bits + 0.6 * other.bits) / ((one.minutes + TESTS[other.test].minutes) * dear));
  return Math.max(alone, ...shared);
}

export interface Meaning {
  /** The cause this outcome would point to. */
  readonly cause: CauseId;
  readonly probability: number;
  /** What the test's first sign would show: the middle of such outcomes. */
  readonly shows: number;
}

/** What each outcome of a test would mean: the causes it would put first, how likely, and what would be read. */
export function meaningsOf(
  test: TestId,
  engine: Engine,
  bank: DonorBank,
  readings: Readings,
  assumed: Assumed = usualAssumed,
): readonly Meaning[] {
  const ask = whatIf(engine, bank.expected, readings, assumed);
  const after = ask.after(TESTS[test].signs);
  const [sign] = TESTS[test].signs;
  const groups = new Map<CauseId, { probability: number; shows: number[] }>();
  for (const outcome of pick(alike(bank, ask.now, readings), 24)) {
    const present = after(outcome.readings);
    const first = CAUSE_IDS[present.indexOf(Math.max(...present))]!;
    const group = groups.get(first) ?? { probability: 0, shows: [] };
    group.probability += outcome.weight;
    group.shows.push(outcome.readings[sign]);
    groups.set(first, group);
  }
  return [...groups]
    .map(([cause, { probability, shows }]) => ({
      cause,
      probability,
      shows: shows.sort((a, b) => a - b)[Math.floor(shows.length / 2)]!,
    }))
    .sort((a, b) => b.probability - a.probability);
}
