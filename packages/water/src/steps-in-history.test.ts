import { describe, expect, it } from "vitest";
import { stepsInHistory } from "./steps-in-history.ts";

/** The rule as it is stated (control-chart habit, common practice, no source): worked by hand. */
const points = (values: readonly number[], u = 3) =>
  values.map((value, i) => ({ at: `2026-01-${String(i + 1).padStart(2, "0")}`, value, u }));

describe("steps in a history", () => {
  it("are none where readings only scatter", () => {
    expect(stepsInHistory(points([200, 204, 197, 202, 199]))).toEqual([]);
  });
  it("are marked at the first reading after, with the mean before", () => {
    expect(stepsInHistory(points([200, 204, 196, 300, 305]))).toEqual([
      { at: "2026-01-04", before: 200, after: 300 },
    ]);
  });
  it("need more than 10 %, however sure the readings", () => {
    expect(stepsInHistory(points([200, 200, 200, 215], 0.1))).toEqual([]);
  });
  it("need more than 3 u of the difference: √(30² + 30²) = 42.4, so 120 is none and 130 is one", () => {
    expect(stepsInHistory(points([400, 520], 30))).toEqual([]);
    expect(stepsInHistory(points([400, 530], 30))).toHaveLength(1);
  });
});
