import { expect, it } from "vitest";
import { steelChlorideLimit } from "./published-limits.ts";

/** Rows of the plate heat-exchanger table, chloride ppm against temperature (common practice, no standard). */
it.each([
  ["304", 60, 50],
  ["304", 80, 25],
  ["304", 120, 10],
  ["316", 60, 300],
  ["316", 80, 150],
  ["316", 120, 80],
  ["316", 130, 25],
] as const)("chloride on %s at %i °C up to %i mg/L", (grade, temperatureC, high) => {
  expect(steelChlorideLimit(grade, temperatureC)).toMatchObject({ value: { high } });
});

it("has no limit for 304 beyond the table", () => {
  expect(steelChlorideLimit("304", 130)).toMatchObject({ kind: "refused", code: "beyond-steel-grade" });
});
