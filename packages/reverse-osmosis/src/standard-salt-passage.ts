export interface PassageConditions {
  /** Permeate flow of the element, any one unit. */
  readonly permeateFlow: number;
  readonly saltTemperatureFactor: number;
  readonly feedConcentration: number;
  readonly feedBrineConcentration: number;
}

/**
 * Salt passage brought to standard conditions, as a fraction of the feed.
 *
 * Formula: SPa · (Qa/Qs)(STCFs/STCFa)(Cfbs/Cfba)(Cfa/Cfs)
 * Source: follows from Cp = B·Cfb/J (solution–diffusion); wording of ASTM D4516 from memory, unverified.
 * Range: high rejection, no significant leak.
 * Error: setting the salt temperature factor equal to the water factor takes temperature out of it.
 * @example
 * ```ts
 * import { standardSaltPassage } from "@tapside/reverse-osmosis";
 * const at = (permeateFlow: number) => ({ permeateFlow, saltTemperatureFactor: 1, feedConcentration: 500, feedBrineConcentration: 550 });
 * standardSaltPassage(0.05, at(100), at(200)); // => 0.025
 * ```
 */
export const standardSaltPassage = (
  actualPassage: number,
  actual: PassageConditions,
  standard: PassageConditions,
): number =>
  ((actualPassage * actual.permeateFlow) / standard.permeateFlow) *
  (standard.saltTemperatureFactor / actual.saltTemperatureFactor) *
  (standard.feedBrineConcentration / actual.feedBrineConcentration) *
  (actual.feedConcentration / standard.feedConcentration);
