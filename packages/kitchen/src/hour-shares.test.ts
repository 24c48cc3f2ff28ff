import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { evenlyBetween, restaurantWeekday } from "./hour-shares.ts";

/** Source: US DOE commercial reference buildings, schedule BLDG_SWH_SCH (`reference/doe-hot-water`). */
const weekday = readFileSync(new URL("../../../reference/doe-hot-water/data.csv", import.meta.url), "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => Number(line.split(",")[1]));

it("a restaurant's weekday is the published schedule: it sums to 7.75 of its peak, the peak hour is 7.74 %", () => {
  const total = weekday.reduce((a, b) => a + b, 0);
  expect(total).toBeCloseTo(7.75, 10);
  restaurantWeekday.forEach((share, hour) => {
    expect(share).toBeCloseTo(weekday[hour]! / total, 12);
  });
  expect(100 * Math.max(...restaurantWeekday)).toBeCloseTo(7.74, 2);
  const three = restaurantWeekday.map((_, i) =>
    [0, 1, 2].reduce((sum, k) => sum + (restaurantWeekday[i + k] ?? 0), 0),
  );
  expect(100 * Math.max(...three)).toBeCloseTo(21.3, 1);
});

it.each([
  [6, 14, 8],
  [22, 4, 6],
  [0, 24, 24],
  [9, 9, 24],
])("evenly from %d to %d is spread over %d hours", (from, until, hours) => {
  const shares = evenlyBetween(from, until);
  if (shares.kind !== "known") throw new Error(shares.kind);
  expect(shares.value.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
  expect(shares.value.filter((share) => share > 0)).toHaveLength(hours);
});

it("an hour opened halfway counts half; no hour of the day is refused", () => {
  const shares = evenlyBetween(6.5, 8);
  expect(shares.kind === "known" && shares.value[6]! / shares.value[7]!).toBeCloseTo(0.5, 12);
  expect(evenlyBetween(25, 3).kind).toBe("refused");
  expect(evenlyBetween(Number.NaN, 3).kind).toBe("refused");
});
