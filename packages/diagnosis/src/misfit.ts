import { CAUSE_IDS, type CauseId } from "./causes.ts";
import { type CauseFit, fitCausesInSlices } from "./fit-cause.ts";
import { type InSlices, inOneGo } from "./internal/in-slices.ts";
import { type Assumed, type Posterior, usualAssumed } from "./posterior.ts";
import type { Scene } from "./scene.ts";
import type { Readings } from "./signs.ts";

const K = CAUSE_IDS.length;

/**
 * Readings are called unexplained below this chance. Set so that about 2 in 100 visits with a known cause are, where the truth is
 * drawn from an altered model with heavier scatter (simulated with seeds of their own, not field evidence).
 */
export const UNEXPLAINED_BELOW = 0.0005;

export interface FitCheck {
  /** The likeliest causes and pairs with their sizes, best fit first. */
  readonly fits: readonly CauseFit[];
  /** Chance that readings of the best fitting cause lie this far off or farther. */
  readonly chance: number;
  /** True: nothing I know explains this. */
  readonly unexplained: boolean;
}

/** What is worth fitting: three causes, two pairs, and soundness. */
function candidates(result: Posterior): readonly (readonly CauseId[])[] {
  const singles = [...result.single.keys()]
    .sort((a, b) => result.single[b]! - result.single[a]!)
    .slice(0, 3)
    .map((i) => [CAUSE_IDS[i]!]);
  const pairs = [...result.pairs.keys()]
    .sort((a, b) => result.pairs[b]! - result.pairs[a]!)
    .slice(0, 2)
    .map((at) => [CAUSE_IDS[Math.floor(at / K)]!, CAUSE_IDS[at % K]!]);
  return [...singles, ...pairs];
}

/** As `checkFit`, with a breath after every run of the forward model. */
export function* checkFitInSlices(
  scene: Scene,
  result: Posterior,
  readings: Readings,
  assumed: Assumed = usualAssumed,
): InSlices<FitCheck> {
  const fits: CauseFit[] = [];
  for (const causes of candidates(result)) fits.push(yield* fitCausesInSlices(scene, causes, readings));
  fits.sort((a, b) => a.misfit - b.misfit);
  const best = fits[0];
  const misfit = Math.min(...fits.map((one) => one.cappedMisfit + costOfSecond(one.causes, assumed)));
  const chance = best && best.count >= 4 ? chiSquareTail(misfit, best.count) : 1;
  return { fits, chance, unexplained: chance < UNEXPLAINED_BELOW };
}

/**
 * How large the likeliest causes are and whether any of them explains the readings. Slow (a second or so): meant for a worker.
 *
 * Formula: least squares over sizes and the unit's own scatter (Gauss–Newton; widths by Laplace); chance = Q(χ², readings), no reading counting more than 7, a second cause counted by its rarity
 * Source: least squares and χ², textbook; the approximation of Wilson and Hilferty (1931) for χ².
 * Range: four readings or more; with fewer nothing is called unexplained.
 * Error: freedoms that fit the readings make the chance too large; the limit is set by simulation.
 */
export const checkFit = (
  scene: Scene,
  result: Posterior,
  readings: Readings,
  assumed: Assumed = usualAssumed,
): FitCheck => inOneGo(checkFitInSlices(scene, result, readings, assumed));

/**
 * What an explanation by two causes pays for being rare, in the same unit as squared distances: two faults that happen to meet can
 * mimic much.
 *
 * Formula: −2 ln(odds of two · frequency of the rarer cause)
 * Source: Bayes' rule, textbook.
 */
function costOfSecond(causes: readonly CauseId[], { frequencies, two }: Assumed): number {
  if (causes.length < 2 || !(two > 0 && two < 1)) return 0;
  const rarer = Math.min(...causes.map((cause) => frequencies[CAUSE_IDS.indexOf(cause)]!));
  return -2 * Math.log(Math.max(1e-6, (two / (1 - two)) * rarer));
}

/** Chance that χ² with `n` degrees of freedom is at least `x`. */
export function chiSquareTail(x: number, n: number): number {
  const cube = (x / n) ** (1 / 3);
  const z = (cube - (1 - 2 / (9 * n))) / Math.sqrt(2 / (9 * n));
  return normalTail(z);
}

/** Chance of a standard normal above `z`. Source: Abramowitz and Stegun 7.1.26 (1.5e-7), from memory, unverified. */
function normalTail(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const poly =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const half = 0.5 * poly * Math.exp(-x * x);
  return z >= 0 ? half : 1 - half;
}
