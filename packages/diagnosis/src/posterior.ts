import { keepSplit } from "./alike-causes.ts";
import { CAUSE_IDS } from "./causes.ts";
import type { Engine } from "./engine.ts";
import type { Expectation } from "./expectation.ts";
import { inputsOf, isRead } from "./features.ts";
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

/** The posterior of inputs. */
export function posteriorOf(engine: Engine, inputs: Float32Array, assumed: Assumed): Posterior {
  run(engine.network, inputs, engine.room);
  return posteriorOfScores(engine, (sign) => isRead(inputs, sign), assumed);
}

/** The posterior of the network's scores, standing in the engine's room. */
function posteriorOfScores(engine: Engine, isSignRead: IsRead, assumed: Assumed): Posterior {
  const single = singleOfScores(engine, isSignRead, assumed);
  if (assumed.two === 0) return { single, pairs: new Float64Array(K * K), two: 0, present: single };
  const halves = halvesOfScores(engine, assumed);
  const two = twoOfScores(engine, assumed);
  const sum = sumOfPairs(halves);
  const pairs = new Float64Array(K * K);
  for (let i = 0; i < PAIRS.length; i++) pairs[PAIRS[i]!] = (halves[FIRST[i]!]! * halves[SECOND[i]!]!) / sum;
  return { single, pairs, two, present: presence(single, halves, two) };
}

/** Of each cause being at work, alone or with another, from the network's scores, standing in the engine's room. */
export function presentOfScores(engine: Engine, isSignRead: IsRead, assumed: Assumed): Float64Array {
  const single = singleOfScores(engine, isSignRead, assumed);
  if (assumed.two === 0) return single;
  return presence(single, halvesOfScores(engine, assumed), twoOfScores(engine, assumed));
}

type IsRead = (sign: number) => boolean;

function shiftIn(assumed: Assumed): Float64Array {
  const shift = shifts.get(assumed) ?? shiftOf(assumed);
  shifts.set(assumed, shift);
  return shift;
}

/** Given that exactly one is at work: training shares divided out, frequencies put in, alike causes kept split. */
function singleOfScores({ room, calibration }: Engine, isSignRead: IsRead, assumed: Assumed): Float64Array {
  const shift = shiftIn(assumed);
  const single = new Float64Array(K);
  for (let i = 0; i < K; i++) single[i] = room.out[i]! / calibration.single + shift[i]!;
  softmax(single);
  keepSplit(single, isSignRead);
  return single;
}

/** A pair is as likely as the product of its halves says, among all that can meet. */
function halvesOfScores({ room, calibration }: Engine, assumed: Assumed): Float64Array {
  const shift = shiftIn(assumed);
  const halves = new Float64Array(K);
  for (let i = 0; i < K; i++) halves[i] = room.out[K + i]! / calibration.pair + shift[i]!;
  softmax(halves);
  return halves;
}

const twoOfScores = ({ room, calibration }: Engine, assumed: Assumed): number =>
  logistic(gateScore(room.out[2 * K]! / calibration.two, assumed.two));

/** Over all pairs that can meet; never 0, so that it can divide. */
function sumOfPairs(halves: Float64Array): number {
  let sum = Number.MIN_VALUE;
  for (let i = 0; i < PAIRS.length; i++) sum += halves[FIRST[i]!]! * halves[SECOND[i]!]!;
  return sum;
}

const logit = (p: number) => Math.log(p / (1 - p));
const logistic = (x: number) => 1 / (1 + Math.exp(-x));
const gateScore = (score: number, expected: number) => score + logit(expected) - logit(TWO_CAUSES.trained);

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

function presence(single: Float64Array, halves: Float64Array, two: number): Float64Array {
  const present = new Float64Array(K);
  let sum = Number.MIN_VALUE;
  for (let i = 0; i < PAIRS.length; i++) {
    const [a, b] = [FIRST[i]!, SECOND[i]!];
    const share = halves[a]! * halves[b]!;
    sum += share;
    present[a] = present[a]! + share;
    present[b] = present[b]! + share;
  }
  for (let i = 0; i < K; i++) present[i] = (1 - two) * single[i]! + (two * present[i]!) / sum;
  return present;
}

/** The posterior from whatever was read, in whatever order it was entered. */
export const posterior = (
  engine: Engine,
  expected: Expectation,
  readings: Readings,
  assumed: Assumed = usualAssumed,
): Posterior => posteriorOf(engine, inputsOf(readings, expected), assumed);
