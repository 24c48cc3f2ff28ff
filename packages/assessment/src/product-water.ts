import type { Outcome } from "@tapside/quantities";
import { known, mapOutcome } from "@tapside/quantities";
import { type ConservedWater, splitStream } from "@tapside/water";

/** Passage of divalent ions and silica against the passage that dissolved solids show. Common practice, no source. */
const DIVALENT = 0.4;
const RECOVERY = 0.25;

/**
 * The product of a membrane that lets `passage` of the dissolved solids through: divalent ions pass less than half as
 * well, CO2 freely. Where no product was read, `USUAL_PASSAGE` stands in and is no reading.
 *
 * Source: passages of ions against dissolved solids are common practice; streams by `splitStream`.
 * Range: passage 0 to 0.5. Error: guidance; a test of the product's own chloride or hardness rules.
 */
export function productWater(
  feed: ConservedWater,
  passage: number,
  divalent: number = DIVALENT,
): Outcome<ConservedWater> {
  const single = 1 - Math.min(Math.max(passage, 0.002), 0.5);
  const double = 1 - divalent * (1 - single);
  const rejections = {
    Ca: double,
    Mg: double,
    SO4: double,
    K: single,
    Cl: single,
    NO3: single,
    F: single,
    SiO2: single,
    alkalinity: single,
  };
  return mapOutcome(splitStream(feed, rejections, RECOVERY), ({ permeate }) => known(permeate));
}

export const USUAL_PASSAGE = 0.05;
