import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blendBar } from "./blend-bar.ts";
import { saturationCurve } from "./saturation-curve.ts";

const draw = (middle: readonly number[], appliances = [{ name: "oven", temperatureC: 100 }]) =>
  saturationCurve({
    theme: "light",
    points: middle.map((m, i) => ({ temperatureC: 20 + 40 * i, low: m - 0.2, middle: m, high: m + 0.2 })),
    appliances,
    description: "d",
    words: { scales: "scales", dissolves: "dissolves" },
  });
const heightOfDot = (svg: string) => Number(/cy="([\d.]+)"/.exec(svg)![1]);

describe("the saturation curve", () => {
  it("stands an appliance at its own temperature, on the curve", () => {
    expect(heightOfDot(draw([-1, 0, 0]))).toBeCloseTo(134, 6);
    expect(heightOfDot(draw([0, 0, 1]))).toBeLessThan(134);
  });
  it("keeps its words clear of the widest band there is", () => {
    const svg = draw([-9, 0, 9]);
    const heights = [.../[ML]([\d.]+) ([\d.]+)/g[Symbol.matchAll](/<path d="(M[^"]*Z)"/.exec(svg)![1]!)].map(
      ([, , height]) => Number(height),
    );
    const baseline = (word: string) => Number(new RegExp(`y="([\\d.]+)"[^>]*>${word}<`).exec(svg)![1]);
    expect(baseline("scales")).toBeLessThan(Math.min(...heights));
    /** 16 px type stands at most 13 px above its baseline. */
    expect(baseline("dissolves") - 13).toBeGreaterThan(Math.max(...heights));
  });
  it("holds no number that is none, whatever it is asked", () => {
    fc.assert(
      fc.property(fc.array(fc.double(), { maxLength: 6 }), fc.string(), (values, name) => {
        const svg = draw(values, [{ name, temperatureC: 60 }]);
        expect(svg.replaceAll(/>[^<]*</g, "><")).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });
});

it("a limit kept nowhere has an empty bar", () => {
  const bar = (kept?: readonly [number, number]) =>
    blendBar({
      theme: "dark",
      limits: [{ name: "Chloride", ...(kept && { kept }) }],
      chosen: 0.3,
      description: "d",
    }).match(/<rect/g)!.length;
  expect(bar([0.1, 0.2]) - bar()).toBe(1);
});
