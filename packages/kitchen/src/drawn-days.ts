import { normalFrom, seededUniform } from "@tapside/water";
import { askedInSteps } from "./day-at-tank.ts";
import { hoursOf, USUAL_DRAW_L, type Use } from "./use.ts";

/** Busy days differ by about this (standard deviation of the logarithm). Common practice, no source. */
const DAY_TO_DAY = 0.15;

/** More than these in a day are as steady as they can be: two to a step of five minutes and more. */
const MOST_DRAWS = 1000;

/** The time of day at which a share of the day's water has been asked for. */
function hourAt(shares: readonly number[], share: number): number {
  let left = share;
  for (let hour = 0; hour < shares.length; hour++) {
    const here = shares[hour]!;
    if (left < here) return hour + left / here;
    left -= here;
  }
  return shares.findLastIndex((here) => here > 0);
}

/**
 * Busy days of a kitchen, each as litres asked in steps of five minutes: some busier than others, every appliance drawing
 * at chance minutes of its hours. The same seed draws the same days, whatever is done to the unit.
 *
 * Source: chance; the spread from day to day is common practice, no source.
 * Range: whole draws of one size an appliance, a thousand a day at most; the mean of many days is the litres told.
 */
export function drawnDays(uses: readonly Use[], days: number, seed: number): readonly Float64Array[] {
  const random = seededUniform(seed);
  const normal = normalFrom(random);
  return Array.from({ length: days }, () => {
    const busy = Math.exp(DAY_TO_DAY * normal() - DAY_TO_DAY ** 2 / 2);
    return askedInSteps(uses.flatMap((use) => drawsOf(use, use.litresPerDay.value * busy, random)));
  });
}

function drawsOf(use: Use, litres: number, random: () => number) {
  const draws = Math.min(Math.max(1, Math.round(litres / (use.drawL ?? USUAL_DRAW_L))), MOST_DRAWS);
  return Array.from({ length: draws }, () => ({
    atHour: hourAt(hoursOf(use), random()),
    litres: litres / draws,
  }));
}
