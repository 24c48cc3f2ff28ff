import type { InSlices } from "./in-slices.ts";
import { solveSymmetric } from "./solve-symmetric.ts";

/** One unknown: where it starts, what it is expected to be, and how it may move. */
export interface Unknown {
  readonly start: number;
  readonly expected: number;
  readonly sd: number;
  /** Small step by which its slope is felt. */
  stepAt(value: number): number;
  readonly low: number;
  readonly high: number;
}

interface At<T> {
  readonly found: T;
  readonly residuals: readonly number[];
}

export interface LeastSquares<T> {
  readonly z: readonly number[];
  readonly found: T;
  /** Squared residuals and squared distances from what is expected, together. */
  readonly cost: number;
  /** The matrix of the last step: the inverse of the covariance (Laplace). */
  readonly normal: readonly (readonly number[])[];
}

export const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, v, i) => sum + v * b[i]!, 0);
const sumSquares = (a: readonly number[]) => dot(a, a);

const MOST_STEPS = 7;
const MOST_TRIALS = 4;
const LONGEST_MOVE = 1.5;
/** A step that gains less was the last. */
const LITTLE = 0.05;

/**
 * The unknowns that leave the least squares, with what is expected of them counted like readings.
 *
 * Formula: Gauss–Newton, its matrix damped (Levenberg–Marquardt)
 * Source: textbook.
 * Range: a start in the valley that is looked for.
 * Error: stops when a step gains less than 0.05.
 */
export function* leastSquares<T>(
  unknowns: readonly Unknown[],
  at: (z: readonly number[]) => At<T>,
): InSlices<LeastSquares<T>> {
  const costOf = (z: readonly number[], { residuals }: At<T>) =>
    sumSquares(residuals) + sumSquares(distances(unknowns, z));
  let z: readonly number[] = unknowns.map(({ start }) => start);
  let here = at(z);
  let cost = costOf(z, here);
  let damping = 0.05;
  let normal: readonly (readonly number[])[] = [];
  for (let step = 0; step < MOST_STEPS; step++) {
    const slopes = yield* slopesAt(unknowns, at, z, here.residuals);
    normal = normalOf(unknowns, slopes);
    const gradient = gradientOf(unknowns, slopes, here.residuals, z);
    const before = cost;
    for (let trial = 0; trial < MOST_TRIALS; trial++) {
      const next = moved(unknowns, z, solveSymmetric(damped(normal, damping), gradient));
      const there = at(next);
      const nextCost = costOf(next, there);
      if (nextCost < cost) {
        [z, here, cost] = [next, there, nextCost];
        damping = Math.max(1e-3, damping / 5);
        break;
      }
      damping *= 8;
    }
    if (before - cost < LITTLE) break;
  }
  return { z, found: here.found, cost, normal };
}

const distances = (unknowns: readonly Unknown[], z: readonly number[]): number[] =>
  z.map((value, k) => (value - unknowns[k]!.expected) / unknowns[k]!.sd);

type Rows = readonly (readonly number[])[];

/** One row an unknown; a breath after each. */
function* slopesAt<T>(
  unknowns: readonly Unknown[],
  at: (z: readonly number[]) => At<T>,
  z: readonly number[],
  from: readonly number[],
): InSlices<Rows> {
  const rows: number[][] = [];
  for (const [k, value] of z.entries()) {
    const h = unknowns[k]!.stepAt(value);
    const shifted = at(z.map((one, i) => (i === k ? value + h : one))).residuals;
    rows.push(shifted.map((one, i) => (one - from[i]!) / h));
    yield;
  }
  return rows;
}

const normalOf = (unknowns: readonly Unknown[], slopes: Rows): number[][] =>
  slopes.map((a, k) => slopes.map((b, l) => dot(a, b) + (k === l ? unknowns[k]!.sd ** -2 : 0)));

function gradientOf(
  unknowns: readonly Unknown[],
  slopes: Rows,
  residuals: readonly number[],
  z: readonly number[],
): number[] {
  const far = distances(unknowns, z);
  return slopes.map((row, k) => dot(row, residuals) + far[k]! / unknowns[k]!.sd);
}

const damped = (normal: Rows, damping: number): number[][] =>
  normal.map((row, k) => row.map((v, l) => (k === l ? v * (1 + damping) : v)));

const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

const moved = (unknowns: readonly Unknown[], z: readonly number[], by: readonly number[]): number[] =>
  z.map((value, k) => {
    const { low, high } = unknowns[k]!;
    return clamp(value - clamp(by[k]!, -LONGEST_MOVE, LONGEST_MOVE), low, high);
  });
