import { describe, expect, it } from "vitest";
import { type ExpectedPort, expectedReadings, type Today, usualScatter } from "./expected-readings.ts";
import { drawnReading, normals } from "./internal/drawn-reading.test-helper.ts";
import { simpleUnit } from "./simple-unit.ts";
import type { Unit } from "./unit.ts";
import { usualPermeatePump as permeatePump } from "./usual-permeate-pump.ts";

const usual: Unit = {
  ...simpleUnit(
    { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 },
    { ratedLPerH: 60, ratedKPa: 414 },
    { volumeL: 53, airChargeKPaGauge: 50 },
  ),
  cartridges: [{ id: "filters", dropKPa: 10, atLPerH: 80 }],
};

const day = (pressureKPa: number, temperatureC: number, mgPerL: number): Today => ({
  feedPressureKPaGauge: { value: pressureKPa, u: 5 },
  temperatureC: { value: temperatureC, u: 0.3 },
  feedMgPerL: { value: mgPerL, u: 0.015 * mgPerL },
});

const cases: readonly (readonly [string, Unit, Today])[] = [
  ["an ordinary unit", usual, day(410, 13, 280)],
  ["little pressure, cold", usual, day(210, 4, 180)],
  [
    "brackish behind a booster",
    { ...usual, booster: { shutOffRiseKPa: 300, openFlowLPerH: 240 } },
    day(300, 18, 3000),
  ],
  ["a permeate pump", { ...usual, permeatePump, shutOff: { ratio: 0.8 } }, day(410, 13, 280)],
  [
    "a permeate pump, cold and weak, a tenth of feed blended in",
    { ...usual, permeatePump, shutOff: { ratio: 0.75 }, blendFraction: 0.1 },
    day(240, 5, 400),
  ],
  ["a vented tank", { ...usual, storage: "vented" }, day(330, 22, 420)],
  ["a tenth of feed blended in", { ...usual, blendFraction: 0.1 }, day(380, 15, 320)],
  [
    "a vented tank, a fifth blended in",
    { ...usual, storage: "vented", blendFraction: 0.2 },
    day(350, 12, 300),
  ],
  [
    "two elements in series, a second tank",
    {
      ...usual,
      elements: [...usual.elements, ...usual.elements],
      tanks: [...usual.tanks, { volumeL: 20, airChargeKPaGauge: 70 }],
    },
    day(500, 10, 350),
  ],
];

const draws = process.env.TAPSIDE_DEPTH ? 8000 : 1500;
/** Four standard errors of a counted 2.5 % point of a normal spread, as a share of the interval's width. */
const counting = (4 * (Math.sqrt(0.025 * 0.975) / 0.0584)) / 3.92 / Math.sqrt(draws);

const quantile = (sorted: readonly number[], share: number) =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;

describe("what it should read today agrees with a large simulation of the whole model (fixed seed)", () => {
  it.each(cases)("%s: both ends within 4 in 100 of the width, besides counting", (_, unit, today) => {
    const expected = expectedReadings(unit, today);
    if (expected.kind !== "known") throw new Error(expected.kind);
    const normal = normals(90_125);
    const runs = Array.from({ length: draws }, () => drawnReading(unit, today, normal, usualScatter));
    for (const [port, { low, high }] of Object.entries(expected.value)) {
      const read = runs.flatMap((run) => run[port as ExpectedPort] ?? []).sort((a, b) => a - b);
      const allowed = (0.04 + counting) * (high - low);
      expect.soft(Math.abs(quantile(read, 0.025) - low), `${port} low`).toBeLessThan(allowed);
      expect.soft(Math.abs(quantile(read, 0.975) - high), `${port} high`).toBeLessThan(allowed);
    }
  });
});
