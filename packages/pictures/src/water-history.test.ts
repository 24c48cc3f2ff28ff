import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type WaterHistoryPoint, waterHistory } from "./water-history.ts";

const draw = (points: readonly WaterHistoryPoint[]) =>
  waterHistory({
    theme: "light",
    points,
    description: "d",
    words: { first: "a", last: "b", value: (value) => `${Math.round(value)} µS/cm` },
  });
const at = (values: readonly number[], steps: readonly number[] = []) =>
  values.map((value, i) => ({ at: i * 1e9, value, u: 5, step: steps.includes(i) }));
const heights = (svg: string) => [...svg.matchAll(/cy="([\d.]+)"/g)].map((match) => Number(match[1]));

describe("the history of a water", () => {
  it("stands a larger reading higher and equal ones level", () => {
    const [a, b, c] = heights(draw(at([300, 400, 300])));
    expect(b!).toBeLessThan(a!);
    expect(c).toBe(a);
  });
  it("draws a quiet water quiet: two percent is not half the picture", () => {
    const [a, b] = heights(draw(at([300, 306])));
    expect(Math.abs(a! - b!)).toBeLessThan(20);
  });
  it("marks a step once, up or down, and writes the means on both sides of it", () => {
    const svg = draw(at([300, 310, 500, 510], [2]));
    expect(svg.match(/stroke-dasharray/g)).toHaveLength(1);
    expect(svg).toContain("305 µS/cm");
    expect(svg).toContain("505 µS/cm");
    expect(draw(at([300, 310, 305]))).not.toContain("stroke-dasharray");
  });
  it("holds no number that is none, whatever it is asked", () => {
    const number = fc.oneof(fc.double({ min: -1e12, max: 1e12 }), fc.constantFrom(Number.NaN, 1 / 0));
    const point = fc.record({ at: number, value: number, u: number, step: fc.boolean() });
    fc.assert(
      fc.property(fc.array(point, { maxLength: 5 }), (points) => {
        expect(draw(points).replaceAll(/>[^<]*</g, "><")).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});
