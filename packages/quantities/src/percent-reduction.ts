import { type Accuracy, instrumentUncertainty } from "./instrument-uncertainty.ts";
import { known, type Outcome, refused } from "./outcome.ts";
import { propagate } from "./propagate.ts";
import type { Uncertain } from "./uncertain.ts";

/** Two readings of dissolved solids on one scale, and the meters' accuracies. */
export interface ReductionReadings {
  readonly feedMgPerL: number;
  readonly productMgPerL: number;
  readonly feedMeter: Accuracy;
  readonly productMeter: Accuracy;
  /** True when one meter read both: its gain error then cancels. */
  readonly sameMeter: boolean;
}

/**
 * Percent reduction 100 (1 − Cp/Cf) with its standard uncertainty in percentage points. One meter for both samples
 * shares its gain error, which cancels in the ratio. Source: JCGM 100, equation (13), applied to the definition.
 *
 * Refused: "feed-not-above-zero".
 *
 * @example
 * ```ts
 * import { percentReduction } from "@tapside/quantities";
 * const meter = { percentOfReading: 2, resolution: 1 };
 * percentReduction({ feedMgPerL: 350, productMgPerL: 18, feedMeter: meter, productMeter: meter, sameMeter: false }); // => { kind: "known", value: { value: 94.857, u: 0.118 } }
 * ```
 */
export function percentReduction(readings: ReductionReadings): Outcome<Uncertain> {
  const { feedMgPerL, productMgPerL } = readings;
  if (!(feedMgPerL > 0)) return refused("feed-not-above-zero", { feedMgPerL });
  const feed = instrumentUncertainty(feedMgPerL, readings.feedMeter);
  const product = instrumentUncertainty(productMgPerL, readings.productMeter);
  const shared =
    readings.sameMeter && feed.u * product.u > 0 ? (feed.gain * product.gain) / (feed.u * product.u) : 0;
  return known(
    propagate(
      ([f, p]) => 100 * (1 - p! / f!),
      [
        { value: feedMgPerL, u: feed.u },
        { value: productMgPerL, u: product.u },
      ],
      () => shared,
    ),
  );
}
