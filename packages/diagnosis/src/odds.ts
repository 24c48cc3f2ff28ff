import { CAUSE_IDS, type CauseId } from "./causes.ts";
import type { Engine } from "./engine.ts";
import type { Expectation } from "./expectation.ts";
import { type Assumed, type Posterior, posterior, usualAssumed } from "./posterior.ts";
import { type Readings, SIGN_IDS, type SignId } from "./signs.ts";

export interface CauseOdds {
  readonly cause: CauseId;
  /** Of this cause being at work, alone or with another. */
  readonly probability: number;
}

export interface PairOdds {
  readonly causes: readonly [CauseId, CauseId];
  readonly probability: number;
}

export interface Odds {
  /** Every cause, most likely first. The probabilities add up to 1 plus the chance of two. */
  readonly causes: readonly CauseOdds[];
  /** The chance that two causes are at work. */
  readonly two: number;
  /** The five likeliest pairs. */
  readonly pairs: readonly PairOdds[];
}

const K = CAUSE_IDS.length;

export function oddsOf(result: Posterior): Odds {
  const causes = CAUSE_IDS.map((cause, i) => ({ cause, probability: result.present[i]! }));
  const pairs = [...result.pairs.keys()]
    .filter((at) => result.pairs[at]! > 1e-3)
    .sort((a, b) => result.pairs[b]! - result.pairs[a]!)
    .slice(0, 5)
    .map((at) => ({
      causes: [CAUSE_IDS[Math.floor(at / K)]!, CAUSE_IDS[at % K]!] as const,
      probability: result.two * result.pairs[at]!,
    }));
  return { causes: causes.sort((a, b) => b.probability - a.probability), two: result.two, pairs };
}

/** Odds over all causes from whatever was read. Which reading was entered when makes no difference. */
export const odds = (
  engine: Engine,
  expected: Expectation,
  readings: Readings,
  assumed: Assumed = usualAssumed,
): Odds => oddsOf(posterior(engine, expected, readings, assumed));

export interface Evidence {
  readonly sign: SignId;
  /** How far this reading moved the cause's odds, as a natural logarithm: above 0 speaks for it. */
  readonly shift: number;
}

const logit = (p: number) => Math.log(Math.max(p, 1e-9) / Math.max(1 - p, 1e-9));

/** For each of these causes: every reading with what the odds would lose without it, the strongest first. */
export function evidenceFor(
  causes: readonly CauseId[],
  engine: Engine,
  expected: Expectation,
  readings: Readings,
  assumed: Assumed = usualAssumed,
): readonly (readonly Evidence[])[] {
  const withAll = posterior(engine, expected, readings, assumed).present;
  const without = SIGN_IDS.filter((sign) => Number.isFinite(readings[sign])).map((sign) => {
    const { [sign]: _, ...others } = readings;
    return { sign, present: posterior(engine, expected, others, assumed).present };
  });
  return causes.map((cause) => {
    const i = CAUSE_IDS.indexOf(cause);
    return without
      .map(({ sign, present }) => ({ sign, shift: logit(withAll[i]!) - logit(present[i]!) }))
      .sort((a, b) => Math.abs(b.shift) - Math.abs(a.shift));
  });
}
