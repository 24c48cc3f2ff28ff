import { expect, it } from "vitest";
import { formatRange } from "./format-range.ts";

it.each([
  [{ low: 57.2, high: 62.4 }, "57–62"],
  [{ low: 6.79, high: 10.3 }, "7–10"],
  [{ low: 2.04, high: 3.51 }, "2.0–3.5"],
  [{ low: 0.932, high: 1.03 }, "0.93–1.03"],
])("both ends of %j carry the decimals of the upper one", (range, text) => {
  expect(formatRange(range)).toBe(text);
});
