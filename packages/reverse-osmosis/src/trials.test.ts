import type { Uncertain } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import { bucketTest } from "./bucket-test.ts";
import { elementFromNameplate, type Nameplate } from "./element-from-nameplate.ts";
import { filling } from "./filling.ts";
import { nameplateReadings } from "./nameplate-readings.ts";
import { operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";
import { type Standardised, type StandardReadings, standardise } from "./standardise.ts";
import { bestAirChargeKPaGauge, usableLitres } from "./tank.ts";
import type { Unit } from "./unit.ts";

// Worked visits computed apart from this code from known truths, readings rounded as a technician reads them.
const psi = 6.894757;
const of442 = 702.1 / 1000;
const sea = 101.325;

const plate = (permeateLPerH: number, rejectLPerH: number, rejection: number, areaM2: number): Nameplate => ({
  permeateLPerH,
  rejectLPerH,
  rejection,
  areaM2,
  polarisation: 1.1,
  pressureKPaGauge: 414,
  temperatureC: 25,
  feedMgPerL: 500,
});
const n1 = plate(31.8, 60, 0.943, 2.2);
const n2 = plate(22.8, 45, 0.946, 1.5);
const n3 = plate(17.9, 35, 0.951, 1.1);

const with1 = (value: number, relative: number, step = 0): Uncertain => ({
  value,
  u: Math.hypot(value * relative, step / Math.sqrt(12)),
});
const readings = (
  mLPerMin: number,
  drainMLPerMin: number,
  bar: number,
  temperatureC: number,
  feed: number,
  waste: number,
): StandardReadings => ({
  permeateLPerH: with1(mLPerMin * 0.06, 0.01),
  drainLPerH: with1(drainMLPerMin * 0.06, 0.01),
  membranePressureKPaGauge: with1(bar * 100, 0, 10),
  temperatureC: with1(temperatureC, 0, 1),
  feedMgPerL: with1(feed, 0.01, 1),
  permeateMgPerL: with1(waste, 0.01, 1),
  permeateToWaste: true,
  firstWaterDiscarded: true,
});
function ratios(now: StandardReadings, then: StandardReadings): Standardised {
  const outcome = standardise(now, then);
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  return outcome.value;
}
const unitOf = (name: Nameplate, chargePsi: number): Unit => {
  const element = elementFromNameplate(name);
  if (element.kind !== "known") throw new Error(element.kind);
  const tank = { volumeL: 53, airChargeKPaGauge: chargePsi * psi };
  const unit = simpleUnit(element.value, { ratedLPerH: name.rejectLPerH!, ratedKPa: 414 }, tank);
  return { ...unit, cartridges: [{ id: "filters", dropKPa: 10, atLPerH: 80 }] };
};

describe("labels give back the element they were computed from", () => {
  it.each([
    [n1, 4.0, 0.65],
    [n2, 4.2, 0.65],
    [n3, 4.5, 0.62],
  ])("A and B to the rounding of the label (3 digits of flow, 0.1 % of rejection)", (name, a, b) => {
    const element = elementFromNameplate(name);
    if (element.kind !== "known") throw new Error(element.kind);
    expect(Math.abs(element.value.waterLPerM2HBar / a - 1)).toBeLessThan(0.005);
    expect(Math.abs(element.value.saltLPerM2H / b - 1)).toBeLessThan(0.015);
  });
});

describe("an annual visit with a clogged filter and a low air charge", () => {
  const found = readings((500 / 94) * 60, (1000 / 65) * 60, (51.6 * psi) / 100, 13, 301 * of442, 15 * of442);
  const commissioned = readings(434, 1006, 4.3, 15, 214, 8);
  it("the element's flow is 0.92 to 0.93 of new", () => {
    expect(ratios(found, nameplateReadings(n1)).waterRatio.value).toBeGreaterThan(0.915);
    expect(ratios(found, nameplateReadings(n1)).waterRatio.value).toBeLessThan(0.935);
  });
  it("salt passage is 1.14 of commissioning, known to about a tenth", () => {
    const { saltRatio } = ratios(found, commissioned);
    expect(saltRatio.value).toBeCloseTo(1.14, 1);
    expect(saltRatio.u).toBeGreaterThan(0.03);
    expect(saltRatio.u).toBeLessThan(0.1);
  });
  it("forgetting the pressure after the filter would say 0.80", () => {
    const blind = { ...found, membranePressureKPaGauge: with1(61 * psi, 0, psi) };
    expect(ratios(blind, nameplateReadings(n1)).waterRatio.value).toBeCloseTo(0.79, 1);
  });
  it("the bucket test gives 3.7 ± 1.5 psi of charge", () => {
    const bucket = bucketTest({
      tankVolumeL: { value: 53, u: 0.5 },
      fullKPaGauge: { value: 42 * psi, u: 0.43 * psi },
      afterKPaGauge: { value: 24 * psi, u: 0.43 * psi },
      drawnL: { value: 8, u: 0.1 },
      atmosphericKPa: sea,
    });
    if (bucket.kind !== "known") throw new Error(bucket.kind);
    expect(bucket.value.airChargeKPaGauge.value / psi).toBeCloseTo(3.7, 1);
    // limits of ±0.75 psi on a gauge read to half its 1 psi marks
    expect((2 * bucket.value.airChargeKPaGauge.u) / psi).toBeCloseTo(1.5, 0);
    expect(bucket.value.waterlogged).toBe(false);
  });
  it("18 psi of charge takes usable water from 11 to 19 litres, 9 psi only to 14", () => {
    const swing = { fullKPaGauge: 42 * psi, minimumKPaGauge: 20 * psi };
    const usable = (charge: number) =>
      usableLitres({ volumeL: 53, airChargeKPaGauge: charge * psi }, swing, sea);
    expect(usable(3.7)).toBeCloseTo(11, 0);
    expect(usable(18)).toBeCloseTo(19, 0);
    expect(usable(9)).toBeCloseTo(14, 0);
    const best = bestAirChargeKPaGauge(swing);
    if (best.kind !== "known") throw new Error(best.kind);
    expect(best.value / psi).toBeCloseTo(18, 5);
  });
  it("as left the tank fills in 1.8 h", () => {
    const unit = unitOf(n1, 18);
    const worn = unit.elements.map((e) => ({ ...e, waterLPerM2HBar: 3.7, saltLPerM2H: 0.74 }));
    const conditions = { feedPressureKPaGauge: 61 * psi, temperatureC: 13, feedMgPerL: 211 };
    const filled = filling({ ...unit, elements: worn }, conditions);
    if (filled.kind !== "known") throw new Error(filled.kind);
    expect(filled.value.hours).toBeCloseTo(1.8, 1);
  });
});

describe("an element eaten by chlorine", () => {
  const found = readings((500 / 64) * 60, (1000 / 79) * 60, 4.22, 20, 330, 44);
  it("gives 1.32 times the flow and passes 4.2 times the salt of new", () => {
    const { waterRatio, saltRatio } = ratios(found, nameplateReadings(n2));
    expect(waterRatio.value).toBeCloseTo(1.32, 1);
    expect(saltRatio.value).toBeCloseTo(4.2, 0);
    expect(Math.abs(saltRatio.value - 4.2)).toBeLessThan(0.15);
  });
  it("a healthy one would give 354 mL/min at 14 mg/L", () => {
    const at = { feedPressureKPaGauge: 440, temperatureC: 20, feedMgPerL: 330, tankPressureKPaGauge: 0 };
    const point = operatingPoint(unitOf(n2, 7), at);
    if (point.kind !== "flowing") throw new Error(point.kind);
    expect(Math.abs(point.permeateLPerH / 0.06 - 354)).toBeLessThan(8);
    expect(Math.abs(point.permeateMgPerL - 14)).toBeLessThan(0.7);
  });
});

describe("a night-time water bill", () => {
  it("the element is fine: 0.96 of new, passage 1.06", () => {
    const found = readings((500 / 118) * 60, (1000 / 106) * 60, 3.89, 21, 265, 13);
    const { waterRatio, saltRatio } = ratios(found, nameplateReadings(n3));
    expect(waterRatio.value).toBeCloseTo(0.96, 2);
    expect(Math.abs(saltRatio.value - 1.06)).toBeLessThan(0.05);
  });
  it("after repair a tank fills in 3.2 h with about 19 mg/L", () => {
    const unit = unitOf(n3, 9);
    const worn = unit.elements.map((e) => ({ ...e, waterLPerM2HBar: 4.3, saltLPerM2H: 0.66 }));
    const conditions = { feedPressureKPaGauge: 400, temperatureC: 21, feedMgPerL: 265 };
    const filled = filling({ ...unit, elements: worn }, conditions);
    if (filled.kind !== "known") throw new Error(filled.kind);
    expect(filled.value.hours).toBeCloseTo(3.2, 0);
    expect(filled.value.meanMgPerL).toBeCloseTo(19, -0.5);
  });
});
