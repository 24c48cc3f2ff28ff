import { expect, it } from "vitest";
import { formatRange } from "./format-range.ts";

it.each([
  [0.25, 0.289, "0.25–0.29"],
  [9.28, 13.4, "9–13"],
  [13.7, 19.2, "14–19"],
  [0.722, 0.799, "0.72–0.80"],
  [58.46, 62.6, "58–63"],
  [5.2, 6.4, "5.2–6.4"],
  [310, 344, "310–344"],
  [57.2, 62.4, "57–62"],
  [6.79, 10.3, "7–10"],
  [2.04, 3.51, "2.0–3.5"],
  [0.932, 1.03, "0.93–1.03"],
])("%d to %d shows no more digits than the interval is wide: %s", (low, high, text) => {
  expect(formatRange({ low, high })).toBe(text);
});

it("writes the person's own decimal sign, and the same number twice when the ends are the same", () => {
  expect(formatRange({ low: 0.25, high: 0.289 }, ",")).toBe("0,25–0,29");
  expect(formatRange({ low: 1.5, high: 1.5 })).toBe("1.50–1.50");
});
