import { CAUSE_IDS } from "./causes.ts";
import type { Engine } from "./engine.ts";
import type { Expectation } from "./expectation.ts";
import { inputsOf } from "./features.ts";
import { type CompanyCounts, type Frequencies, frequencies } from "./frequencies.ts";
import { run } from "./network.ts";
import { CAN_MEET } from "./pairs.ts";
import type { Readings } from "./signs.ts";
import { TRAINING_SHARES, TWO_CAUSES } from "./training-shares.ts";

const K = CAUSE_IDS.length;
const trainedTotal = TRAINING_SHARES.reduce((sum, share) => sum + share, 0);

/** What is assumed besides the readings. */
export interface Assumed {
  readonly frequencies: Frequencies;
  /** How often two causes are at work; 0 when exactly one is assumed. */
  readonly two: number;
  /** 1 for causes that are considered at all, by `CAUSE_IDS`. */
  readonly considered?: ArrayLike<number>;
}

export const usualAssumed: Assumed = { frequencies: frequencies(), two: TWO_CAUSES.expected };

/** What is assumed where the company has counts of its own. */
export const assumedWith = (counts: CompanyCounts | undefined): Assumed =>
  counts ? { ...usualAssumed, frequencies: frequencies(counts) } : usualAssumed;

/** Probabilities by index into `CAUSE_IDS`. */
export interface Posterior {
  /** Given that exactly one is at work. */
  readonly single: Float64Array;
  /** Of two being at work. */
  readonly two: number;
  /** Given two: of each pair, at `a * K + b` with a < b. */
  readonly pairs: Float64Array;
  /** Of each being at work, alone or with another. */
  readonly present: Float64Array;
}

/** Pairs that can meet, as `a * K + b` with a < b. */
const PAIRS = Int16Array.from(
  Array.from({ length: K * K }, (_, at) => at).filter((at) => Math.floor(at / K) < at % K && CAN_MEET[at]),
);

const FIRST = PAIRS.map((at) => Math.floor(at / K));
const SECOND = PAIRS.map((at) => at % K);

/** What is added to a cause's score: training shares out, frequencies in. */
function shiftOf(assumed: Assumed): Float64Array {
  return Float64Array.from(CAUSE_IDS, (_, i) =>
    assumed.considered && !assumed.considered[i]
      ? Number.NEGATIVE_INFINITY
      : Math.log(assumed.frequencies[i]! / (TRAINING_SHARES[i]! / trainedTotal)),
  );
}

const shifts = new WeakMap<Assumed, Float64Array>();

/** From the network's scores to probabilities: training shares divided out, frequencies put in. */
export function posteriorOf(engine: Engine, inputs: Float32Array, assumed: Assumed): Posterior {
  run(engine.network, inputs, engine.room);
  const { out } = engine.room;
  const { calibration } = engine;
  const shift = shifts.get(assumed) ?? shiftOf(assumed);
  shifts.set(assumed, shift);
  const single = new Float64Array(K);
  for (let i = 0; i < K; i++) single[i] = out[i]! / calibration.single + shift[i]!;
  softmax(single);
  if (assumed.two === 0) return { single, pairs: new Float64Array(K * K), two: 0, present: single };
  const pairs = pairShares(out, calibration.pair, shift);
  const two = logistic(gateScore(out[2 * K]! / calibration.two, assumed.two));
  return { single, pairs, two, present: presence(single, pairs, two) };
}

const logit = (p: number) => Math.log(p / (1 - p));
const logistic = (x: number) => 1 / (1 + Math.exp(-x));
const gateScore = (score: number, expected: number) => score + logit(expected) - logit(TWO_CAUSES.trained);

/** Of every pair that can meet: the two scores together, as a share of all pairs. */
function pairShares(out: Float32Array, divisor: number, shift: Float64Array): Float64Array {
  const half = new Float64Array(K);
  for (let i = 0; i < K; i++) half[i] = out[K + i]! / divisor + shift[i]!;
  softmax(half);
  const pairs = new Float64Array(K * K);
  let sum = 0;
  for (let i = 0; i < PAIRS.length; i++) {
    const share = half[FIRST[i]!]! * half[SECOND[i]!]!;
    pairs[PAIRS[i]!] = share;
    sum += share;
  }
  if (sum > 0) for (let i = 0; i < PAIRS.length; i++) pairs[PAIRS[i]!] = pairs[PAIRS[i]!]! / sum;
  return pairs;
}

/** In place. */
function softmax(values: Float64Array): void {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) most = Math.max(most, values[i]!);
  let sum = 0;
  for (let i = 0; i < values.length; i++) {
    values[i] = Math.exp(values[i]! - most);
    sum += values[i]!;
  }
  for (let i = 0; i < values.length; i++) values[i] = values[i]! / sum;
}

function presence(single: Float64Array, pairs: Float64Array, two: number): Float64Array {
  const present = new Float64Array(K);
  for (let i = 0; i < K; i++) present[i] = (1 - two) * single[i]!;
  for (let i = 0; i < PAIRS.length; i++) {
    const share = two * pairs[PAIRS[i]!]!;
    present[FIRST[i]!] = present[FIRST[i]!]! + share;
    present[SECOND[i]!] = present[SECOND[i]!]! + share;
  }
  return present;
}

/** The posterior from whatever was read, in whatever order it was entered. */
export const posterior = (
  engine: Engine,
  expected: Expectation,
  readings: Readings,
  assumed: Assumed = usualAssumed,
): Posterior => posteriorOf(engine, inputsOf(readings, expected), assumed);
