import { CAUSE_IDS } from "./causes.ts";
import type { Engine } from "./engine.ts";
import type { Expectation } from "./expectation.ts";
import { inputsOf } from "./features.ts";
import { type Frequencies, frequencies } from "./frequencies.ts";
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

/** From the network's scores to probabilities: training shares divided out, frequencies put in. */
export function posteriorOf(engine: Engine, inputs: Float32Array, assumed: Assumed): Posterior {
  run(engine.network, inputs, engine.room);
  const { out } = engine.room;
  const { calibration } = engine;
  const shift = CAUSE_IDS.map((_, i) =>
    assumed.considered && !assumed.considered[i]
      ? Number.NEGATIVE_INFINITY
      : Math.log(assumed.frequencies[i]! / (TRAINING_SHARES[i]! / trainedTotal)),
  );
  const single = softmax(K, (i) => out[i]! / calibration.single + shift[i]!);
  const pairs = softmax(K * K, (at) => {
    const a = Math.floor(at / K);
    const b = at % K;
    if (a >= b || !CAN_MEET[at]) return Number.NEGATIVE_INFINITY;
    return (out[K + a]! + out[K + b]!) / calibration.pair + shift[a]! + shift[b]!;
  });
  const two = assumed.two > 0 ? logistic(gateScore(out[2 * K]! / calibration.two, assumed.two)) : 0;
  return { single, pairs, two, present: presence(single, pairs, two) };
}

const logit = (p: number) => Math.log(p / (1 - p));
const logistic = (x: number) => 1 / (1 + Math.exp(-x));
const gateScore = (score: number, expected: number) => score + logit(expected) - logit(TWO_CAUSES.trained);

function softmax(n: number, score: (i: number) => number): Float64Array {
  const result = new Float64Array(n);
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < n; i++) {
    result[i] = score(i);
    most = Math.max(most, result[i]!);
  }
  let sum = 0;
  for (let i = 0; i < n; i++) {
    result[i] = Math.exp(result[i]! - most);
    sum += result[i]!;
  }
  for (let i = 0; i < n; i++) result[i] = result[i]! / sum;
  return result;
}

function presence(single: Float64Array, pairs: Float64Array, two: number): Float64Array {
  const present = single.map((p) => (1 - two) * p);
  if (two === 0) return present;
  for (let a = 0; a < K; a++)
    for (let b = a + 1; b < K; b++) {
      const share = two * pairs[a * K + b]!;
      present[a] = present[a]! + share;
      present[b] = present[b]! + share;
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
