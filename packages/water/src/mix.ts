import { known, type Outcome, refused } from "@tapside/quantities";
import { CONSTITUENTS, type ConservedWater, type ConstituentId } from "./analysis.ts";

/** One part of a mixture: a water and how much of it. */
export interface MixPart {
  readonly water: ConservedWater;
  readonly litres: number;
}

/**
 * Closed mixing by mass of water: every total, alkalinity, carbon and temperature is the weighted mean.
 *
 * Source: conservation of mass and charge. Range: any. Error: none of its own; heat capacities taken as equal.
 */
export function mix(parts: readonly MixPart[]): Outcome<ConservedWater> {
  let litres = 0;
  for (const part of parts) {
    if (!(part.litres >= 0)) return refused("negative-volume", { litres: part.litres });
    litres += part.litres;
  }
  if (!(litres > 0)) return refused("nothing-to-mix");
  const mean = (of: (w: ConservedWater) => number) =>
    parts.reduce((sum, part) => sum + of(part.water) * part.litres, 0) / litres;
  const totals = Object.fromEntries(CONSTITUENTS.map((id) => [id, mean((w) => w.totals[id])]));
  return known({
    temperatureC: mean((w) => w.temperatureC),
    totals: totals as Record<ConstituentId, number>,
    alkalinityEqPerKg: mean((w) => w.alkalinityEqPerKg),
    carbonMolPerKg: mean((w) => w.carbonMolPerKg),
  });
}

/** A blend valve: `feedFraction` of the first water, the rest of the second. */
export function blend(
  feed: ConservedWater,
  permeate: ConservedWater,
  feedFraction: number,
): Outcome<ConservedWater> {
  if (!(feedFraction >= 0 && feedFraction <= 1)) return refused("fraction-out-of-range", { feedFraction });
  return mix([
    { water: feed, litres: feedFraction },
    { water: permeate, litres: 1 - feedFraction },
  ]);
}
