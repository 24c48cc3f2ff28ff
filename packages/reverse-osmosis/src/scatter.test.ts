import { describe, expect, it } from "vitest";
import { type ExpectedPort, expectedReadings, usualScatter } from "./expected-readings.ts";
import { fitUnit } from "./fit-unit.ts";
import { drawnReading, normals } from "./internal/drawn-reading.test-helper.ts";
import { operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";
import type { Unit } from "./unit.ts";

const element = { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 };
const unit: Unit = {
  ...simpleUnit(element, { ratedLPerH: 60, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 50 }),
  cartridges: [{ id: "filters", dropKPa: 10, atLPerH: 80 }],
};
const today = {
  feedPressureKPaGauge: { value: 410, u: 5 },
  temperatureC: { value: 13, u: 0.3 },
  feedMgPerL: { value: 280, u: 4 },
};
const draws = process.env.TAPSIDE_DEPTH ? 4000 : 1200;
/** 19 in 20 of so many draws, within four standard deviations of counting and 1 in 100 for what first order leaves out. */
const slack = 4 * Math.sqrt((0.95 * 0.05) / draws) + 0.01;

describe("intervals hold what they say they hold (simulation with a fixed seed)", () => {
  const expected = expectedReadings(unit, today);
  if (expected.kind !== "known") throw new Error(expected.kind);
  const normal = normals(4711);
  const runs = Array.from({ length: draws }, () => drawnReading(unit, today, normal, usualScatter));
  it.each(Object.keys(expected.value) as ExpectedPort[])(
    "what it should read today, %s: 19 in 20",
    (port) => {
      const { low, high } = expected.value[port]!;
      const inside = runs.filter((run) => run[port]! >= low && run[port]! <= high).length / draws;
      expect(Math.abs(inside - 0.95)).toBeLessThan(slack);
    },
  );

  it("A, B and restrictor of a fit: 19 in 20", () => {
    const at = { feedPressureKPaGauge: 390, temperatureC: 13, feedMgPerL: 280, tankPressureKPaGauge: 0 };
    const truth = operatingPoint(simpleUnit(element, { ratedLPerH: 60, ratedKPa: 414 }), at);
    if (truth.kind !== "flowing") throw new Error(truth.kind);
    const noise = normals(20);
    const read = (value: number, u: number) => ({ value: value + noise() * u, u });
    const inside = { water: 0, salt: 0, restrictor: 0 };
    const n = draws / 4;
    for (let i = 0; i < n; i++) {
      const fit = fitUnit({
        elementPressureKPaGauge: read(390, 5),
        permeatePressureKPaGauge: 0,
        temperatureC: read(13, 0.3),
        feedMgPerL: read(280, 3),
        permeateLPerH: read(truth.permeateLPerH, 0.01 * truth.permeateLPerH),
        permeateMgPerL: read(truth.permeateMgPerL, 0.4),
        drainLPerH: read(truth.concentrateLPerH, 0.01 * truth.concentrateLPerH),
        areaM2: 1.5,
        polarisation: 1.1,
        temperatureForm: "1.03^(T-25)",
        restrictorRatedKPa: 414,
      });
      if (fit.kind !== "known") throw new Error(fit.kind);
      const holds = ({ value, u }: { value: number; u: number }, is: number) =>
        Number(Math.abs(value - is) <= 1.96 * u);
      inside.water += holds(fit.value.waterLPerM2HBar, 4.2);
      inside.salt += holds(fit.value.saltLPerM2H, 0.65);
      inside.restrictor += holds(fit.value.restrictorRatedLPerH, 60);
    }
    for (const held of Object.values(inside))
      expect(Math.abs(held / n - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / n) + 0.01);
  });
});
