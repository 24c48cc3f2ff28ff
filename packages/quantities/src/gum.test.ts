import { describe, expect, it } from "vitest";
import { decide } from "./decide.ts";
import { formatUncertain } from "./format-uncertain.ts";
import { instrumentUncertainty } from "./instrument-uncertainty.ts";
import { percentReduction } from "./percent-reduction.ts";
import { propagate } from "./propagate.ts";
import { propagateTogether } from "./propagate-together.ts";

/** Source: JCGM 100, H.2 (simultaneous resistance and reactance), as transcribed in public GUM software documentation. */
describe("JCGM 100 example H.2", () => {
  const inputs = [
    { value: 4.999, u: 3.2e-3 },
    { value: 19.661e-3, u: 9.5e-6 },
    { value: 1.04446, u: 7.5e-4 },
  ];
  const r: Record<string, number> = { "0,1": -0.36, "0,2": 0.86, "1,2": -0.65 };
  const correlation = (i: number, j: number) => r[`${i},${j}`] ?? 0;
  const R = ([v, i, phi]: readonly number[]) => (v! * Math.cos(phi!)) / i!;
  const X = ([v, i, phi]: readonly number[]) => (v! * Math.sin(phi!)) / i!;
  const Z = ([v, i]: readonly number[]) => v! / i!;
  it.each([
    ["R", R, "127.732", 3, "0.070"],
    ["X", X, "219.85", 2, "0.30"],
    ["Z", Z, "254.26", 2, "0.24"],
  ] as const)("%s to the published digits", (_, f, value, decimals, u) => {
    const result = propagate(f, inputs, correlation);
    expect(result.value.toFixed(decimals)).toBe(value);
    expect(result.u.toFixed(decimals)).toBe(u);
  });
  it.each([
    ["R and X", R, X, -0.59],
    ["R and Z", R, Z, -0.49],
    ["X and Z", X, Z, 0.99],
  ] as const)("%s correlate as published", (_, f, g, r) => {
    expect(propagateTogether(f, g, inputs, correlation).correlation.toFixed(2)).toBe(r.toFixed(2));
  });
});

describe("percent reduction, JCGM 100 equation (13) worked by hand", () => {
  const of = (percent: number, step: number) => ({ percentOfReading: percent, resolution: step });
  it("350 to 18 ppm, ±2 % of reading, 1 ppm step: 94.86 %, U 0.24", () => {
    const result = percentReduction({
      feedMgPerL: 350,
      productMgPerL: 18,
      feedMeter: of(2, 1),
      productMeter: of(2, 1),
      sameMeter: false,
    });
    expect(result).toMatchObject({ kind: "known" });
    if (result.kind !== "known") return;
    expect(result.value.value).toBeCloseTo(94.857, 3);
    expect(2 * result.value.u).toBeCloseTo(0.24, 2);
  });
  it("the same meter with a pure gain error leaves only the step: U 0.17", () => {
    const result = percentReduction({
      feedMgPerL: 350,
      productMgPerL: 18,
      feedMeter: of(2, 1),
      productMeter: of(2, 1),
      sameMeter: true,
    });
    if (result.kind === "known") expect(2 * result.value.u).toBeCloseTo(0.17, 2);
  });
  it("±2 % of a 999 ppm full scale: U 6.6, meaningless", () => {
    const meter = { percentOfFullScale: 2, fullScale: 999 };
    const result = percentReduction({
      feedMgPerL: 350,
      productMgPerL: 18,
      feedMeter: meter,
      productMeter: meter,
      sameMeter: false,
    });
    if (result.kind === "known") expect(2 * result.value.u).toBeCloseTo(6.6, 1);
  });
  it("299 to 15 ppm is 95.0 % (common practice, no source)", () => {
    const result = percentReduction({
      feedMgPerL: 299,
      productMgPerL: 15,
      feedMeter: {},
      productMeter: {},
      sameMeter: true,
    });
    if (result.kind === "known") expect(result.value.value.toFixed(1)).toBe("95.0");
  });
});

it("recovery 250 of 1000 mL/min, 0.752 % each: 25.0 %, U 0.40 (JCGM 100 worked by hand)", () => {
  const result = propagate(
    ([p, c]) => (100 * p!) / (p! + c!),
    [
      { value: 250, u: 250 * 0.00752 },
      { value: 750, u: 750 * 0.00752 },
    ],
  );
  expect(result.value).toBeCloseTo(25, 6);
  expect(2 * result.u).toBeCloseTo(0.4, 2);
});

it("a 0–30 psi grade B gauge at 7 psi is ±0.9 psi (US Army MM0486: 3 % of span in the outer quarters)", () => {
  expect(instrumentUncertainty(7, { percentOfFullScale: 3, fullScale: 30 }).u * Math.sqrt(3)).toBeCloseTo(
    0.9,
    6,
  );
});

describe("the guard band", () => {
  it.each([
    [{ value: 95.0, u: 0.1588 }, 94, "within"],
    [{ value: 95.2, u: 0.2438 }, 95, "tooClose"],
    [{ value: 93.0, u: 0.2 }, 94, "outside"],
  ] as const)("%j against at least %d: %s (JCGM 106 worked by hand)", (measured, low, verdict) => {
    expect(decide(measured, { low }).verdict).toBe(verdict);
  });
});

it("the simple rule compares the value alone", () => {
  expect(decide({ value: 95.2, u: 0.2438 }, { low: 95 }, "simple").verdict).toBe("within");
  expect(decide({ value: 94.9, u: 0.2438 }, { low: 95 }, "simple").verdict).toBe("outside");
});

it("prints no digit the uncertainty does not back", () => {
  expect(formatUncertain({ value: 127.7321, u: 0.07 })).toEqual({ text: "127.73", uText: "0.14" });
  expect(formatUncertain({ value: 22.4, u: 1 })).toEqual({ text: "22", uText: "2" });
});
