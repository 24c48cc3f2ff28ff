import { known, type Outcome, refused } from "@tapside/quantities";

/** Shares of a day's use in each clock hour from midnight: 24 numbers that sum to 1. */
export type HourShares = readonly number[];

const HOURS = 24;

const normalised = (weights: readonly number[]): HourShares => {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
};

/**
 * How a restaurant's hot-water use is spread over the hours of a weekday: what stands in where nothing is told of a kitchen.
 *
 * Source: US Department of Energy commercial reference buildings, schedule BLDG_SWH_SCH (`reference/doe-hot-water`).
 * Range: an assumed profile for hot water, no measurement of what appliances draw.
 */
export const restaurantWeekday: HourShares = normalised([
  0.2, 0, 0, 0, 0, 0, 0.15, 0.6, 0.55, 0.45, 0.4, 0.45, 0.4, 0.35, 0.3, 0.3, 0.3, 0.4, 0.55, 0.6, 0.5, 0.55,
  0.45, 0.25,
]);

/**
 * Use spread evenly between two times of the day, over midnight where the second is the earlier; the same time twice is
 * the whole day.
 *
 * Range: hours from 0 to 24. Refused: "hour-of-day".
 * @example
 * ```ts
 * import { evenlyBetween } from "@tapside/kitchen";
 * const shares = evenlyBetween(22, 2);
 * shares.kind === "known" ? shares.value[23] : 0; // => 0.25
 * ```
 */
export function evenlyBetween(fromHour: number, untilHour: number): Outcome<HourShares> {
  for (const hour of [fromHour, untilHour])
    if (!(hour >= 0 && hour <= HOURS)) return refused("hour-of-day", { hour });
  const until = untilHour > fromHour ? untilHour : untilHour + HOURS;
  const weights = Array.from({ length: HOURS }, (_, hour) =>
    [hour, hour + HOURS].reduce(
      (sum, start) => sum + Math.max(0, Math.min(start + 1, until) - Math.max(start, fromHour)),
      0,
    ),
  );
  return known(normalised(weights));
}
