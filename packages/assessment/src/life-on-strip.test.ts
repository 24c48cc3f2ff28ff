import { expect, it } from "vitest";
import type { LifePoint } from "./assessment.ts";
import { lifeOnStrip } from "./life-on-strip.ts";

const point = (visit: string, at: string, flow?: number): LifePoint => ({
  visit,
  at,
  ...(flow !== undefined && { flowRatio: { value: flow, u: 0.02 } }),
  marks: [],
});

it("lies in proportion to time, its whiskers are U (k = 2), and visits that judged nothing are left out", () => {
  const life = [
    point("a", "2024-01-01", 1),
    point("b", "2024-06-01"),
    point("c", "2025-01-01", 0.9),
    point("d", "2026-01-01", 0.8),
  ];
  const placed = lifeOnStrip(life, "d");
  expect(placed.map((one) => one.place.toFixed(2))).toEqual(["0.00", "0.50", "1.00"]);
  expect(placed.map((one) => one.flowU)).toEqual([0.04, 0.04, 0.04]);
  expect(placed.map((one) => one.today)).toEqual([false, false, true]);
});

it("one judged visit is nothing to compare", () => {
  expect(lifeOnStrip([point("a", "2024-01-01", 1), point("b", "2024-06-01")], "a")).toEqual([]);
});
