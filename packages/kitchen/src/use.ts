import type { Uncertain } from "@tapside/quantities";
import { type HourShares, restaurantWeekday } from "./hour-shares.ts";

/** What one appliance takes from the tank. */
export interface Use {
  readonly name: string;
  /** On a busy day, L, and how well that is known. */
  readonly litresPerDay: Uncertain;
  /** Spread over the hours; a restaurant's weekday when nothing is told. */
  readonly hours?: HourShares;
  /** What one draw takes, L. */
  readonly drawL?: number;
}

/**
 * Standard uncertainty of a busy day's litres: told from memory, or taken from a counter's mean, which counts the days
 * off too. Common practice, no source.
 */
export const LITRES_RELATIVE = { told: 0.2, meanOfCounter: 0.3 } as const;

/** A coffee machine's fill or an oven's burst of steam. Common practice, no source. */
export const USUAL_DRAW_L = 3;

export const hoursOf = (use: Use): HourShares => use.hours ?? restaurantWeekday;

/** Everything that is asked for on a busy day, L; what is told of one appliance says nothing of another. */
export const askedOf = (uses: readonly Use[]): Uncertain => ({
  value: uses.reduce((sum, use) => sum + use.litresPerDay.value, 0),
  u: Math.hypot(...uses.map((use) => use.litresPerDay.u)),
});

/** Litres by clock hour of a busy day. */
export const litresByHour = (uses: readonly Use[]): readonly number[] =>
  Array.from({ length: 24 }, (_, hour) =>
    uses.reduce((sum, use) => sum + use.litresPerDay.value * hoursOf(use)[hour]!, 0),
  );
