import { describe, expect, it } from "vitest";
import { capillaryFlow } from "./capillary-flow.ts";
import { efficiency } from "./efficiency.ts";
import { filling } from "./filling.ts";
import { logMeanFactor } from "./log-mean-factor.ts";
import { naclOsmoticPressureKPa } from "./nacl-osmotic-pressure.ts";
import { operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";
import { standardise } from "./standardise.ts";
import { storedLitres, usableLitres } from "./tank.ts";

const psi = 6.894757;
const near = (value: number, expected: number, tolerance: number) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);

/** Sodium chloride of a given osmotic pressure at 25 °C. */
function concentrationOf(kPa: number): number {
  let mgPerL = 400;
  for (let n = 0; n < 20; n++) mgPerL *= kPa / naclOsmoticPressureKPa(mgPerL, 25);
  return mgPerL;
}

describe("check rows of the trade and of textbooks", () => {
  it("N9: 35 gpm × 1.44 × 225/285 = 39.8; N10: 8 gpd / 0.69 = 11.6 (worked examples, common practice)", () => {
    // An ideal element without salt: flow goes with pressure alone, and with 1/0.69 for temperature.
    const flow = (kPa: number) => {
      const unit = simpleUnit(
        { areaM2: 1, waterLPerM2HBar: 4, saltLPerM2H: 1e-9 },
        { ratedLPerH: 60, ratedKPa: 414 },
      );
      const point = operatingPoint(unit, {
        feedPressureKPaGauge: kPa,
        temperatureC: 25,
        feedMgPerL: 0,
        tankPressureKPaGauge: 0,
      });
      return point.kind === "flowing" ? point.permeateLPerH : 0;
    };
    near(35 * 1.44 * (flow(225) / flow(285)), 39.8, 0.05);
    near(8 / 0.69, 11.6, 0.05);
  });
  it("S1: water and salt constants from a textbook's cell (Geankoplis 13.10-1, from memory, unverified)", () => {
    const areaM2 = 2e-3;
    const waterKgPerS = (1.92e-8 * 997) / areaM2;
    near(waterKgPerS / (54.42 - 7.48) / 2.04e-4, 1, 0.01);
    near((1.92e-8 * 0.39) / areaM2 / (10 - 0.39) / 3.896e-7, 1, 0.01);
    near(1 - 0.39 / 10, 0.961, 0.001);
  });
  it("S9: the stepped element agrees with the log mean (0.3 % of flow, 0.5 % of permeate; ASTM D5615 conditions)", () => {
    const unit = simpleUnit(
      { areaM2: 0.4, waterLPerM2HBar: 5, saltLPerM2H: 0.5 },
      { ratedLPerH: 22.546, ratedKPa: 345 },
    );
    const point = operatingPoint(unit, {
      feedPressureKPaGauge: 345,
      temperatureC: 25,
      feedMgPerL: 300,
      tankPressureKPaGauge: 0,
    });
    if (point.kind !== "flowing") throw new Error(point.kind);
    const mean = 300 * logMeanFactor(0.22);
    const driveKPa = 345 - naclOsmoticPressureKPa(mean, 25) + naclOsmoticPressureKPa(10.3, 25);
    const byMean = (0.4 * 5 * driveKPa) / 100;
    near(byMean / 6.357, 1, 0.003);
    near(point.permeateLPerH / byMean, 1, 0.003);
    near(point.permeateMgPerL / 10.33, 1, 0.005);
  });
  it("F5: 1 mL/min is 0.3804 gpd", () => {
    near((60 * 24) / 3785.412, 0.3804, 0.0001);
  });
  it("P4, P5: a filling by hand (A·S 2.0, π 0.3 bar, reject held at 24 L/h)", () => {
    // So much reject that nothing concentrates: the osmotic pressure stays at 30 kPa; the 24 L/h are counted beside.
    const mgPerL = concentrationOf(30);
    const unit = {
      ...simpleUnit(
        { areaM2: 1, waterLPerM2HBar: 2, saltLPerM2H: 1e-9 },
        { ratedLPerH: 1e5, ratedKPa: 60 * psi },
        { volumeL: 15.1, airChargeKPaGauge: 7 * psi },
      ),
      shutOff: { ratio: 2 / 3 },
      atmosphericKPa: 14.696 * psi,
    };
    const at = { feedPressureKPaGauge: 60 * psi, temperatureC: 25, feedMgPerL: mgPerL };
    const filled = filling(unit, at);
    const open = operatingPoint(unit, { ...at, tankPressureKPaGauge: 0 });
    if (filled.kind !== "known" || open.kind !== "flowing") throw new Error("no filling");
    const { storedL, hours, start, atShutOff } = filled.value;
    near(storedL / 9.11, 1, 0.005);
    near(hours / 1.928, 1, 0.005);
    near((efficiency(storedL, 24 * hours) * 100) / 16.45, 1, 0.005);
    near(((open.permeateLPerH / (open.permeateLPerH + 24)) * 100) / 24.23, 1, 0.005);
    near(atShutOff.permeateLPerH / 2.158, 1, 0.005);
    near(start.permeateLPerH / 6.708, 1, 0.005);
  });
  it("K11: full tank against open: 15/55 = 0.2727 of the flow (60 feed, 40 tank, Δπ 5 psi)", () => {
    const unit = simpleUnit(
      { areaM2: 0.01, waterLPerM2HBar: 4, saltLPerM2H: 1e-9 },
      { ratedLPerH: 500, ratedKPa: 414 },
    );
    const mgPerL = concentrationOf(5 * psi);
    const flow = (tankPsi: number) => {
      const point = operatingPoint(unit, {
        feedPressureKPaGauge: 60 * psi,
        temperatureC: 25,
        feedMgPerL: mgPerL,
        tankPressureKPaGauge: tankPsi * psi,
      });
      return point.kind === "flowing" ? point.permeateLPerH : 0;
    };
    near(flow(40) / flow(0), 0.2727, 0.001);
  });
});

describe("traps", () => {
  it("gauge for absolute pressure would store 0.825 of the tank, not 0.603", () => {
    const share = storedLitres({ volumeL: 1, airChargeKPaGauge: 7 * psi }, 40 * psi, 101.325);
    expect(share).toBeLessThan(0.61);
    expect(1 - 7 / 40).toBeGreaterThan(0.82);
  });
  it("mixed temperature families are refused", () => {
    const set = {
      permeateLPerH: { value: 20, u: 0.1 },
      drainLPerH: { value: 60, u: 0.5 },
      membranePressureKPaGauge: { value: 400, u: 5 },
      temperatureC: { value: 10, u: 0.3 },
      feedMgPerL: { value: 400, u: 4 },
      permeateMgPerL: { value: 20, u: 1 },
    };
    const history = { ...set, standardisedWith: "K=2700" } as never;
    expect(standardise(set, history)).toMatchObject({ kind: "refused", code: "mixed-temperature-forms" });
  });
  it("the capillary law beyond its Reynolds range is not used: 0.60 mm would give 2.5 times too much", () => {
    const flow = capillaryFlow({ boreMm: 0.6, lengthM: 0.3 }, 60 * psi, 20);
    expect(flow.regime).toBe("beyond-laminar");
    expect(262.8 / (flow.flowLPerH / 0.06)).toBeGreaterThan(2);
  });
  it("efficiency is not recovery: a filling's is the lower", () => {
    const unit = simpleUnit(
      { areaM2: 1.2, waterLPerM2HBar: 4, saltLPerM2H: 0.6 },
      { ratedLPerH: 60, ratedKPa: 414 },
      { volumeL: 53, airChargeKPaGauge: 50 },
    );
    const filled = filling(unit, { feedPressureKPaGauge: 400, temperatureC: 15, feedMgPerL: 300 });
    if (filled.kind !== "known") throw new Error(filled.kind);
    const { storedL, drainL, recoveryAtStart } = filled.value;
    expect(efficiency(storedL, drainL)).toBeLessThan(0.85 * recoveryAtStart);
  });
});

describe("counter-examples to what one would think", () => {
  it("with a clogged filter and a capillary drain, colder can give more permeate", () => {
    const unit = {
      ...simpleUnit(
        { areaM2: 0.3, waterLPerM2HBar: 3, saltLPerM2H: 0.3 },
        { kind: "measured", law: "laminar", flowLPerH: 80, dropKPa: 300, temperatureC: 20 },
      ),
      cartridges: [{ id: "clogged", dropKPa: 330, atLPerH: 60 }],
    };
    const flow = (temperatureC: number) => {
      const point = operatingPoint(unit, {
        feedPressureKPaGauge: 400,
        temperatureC,
        feedMgPerL: 2500,
        tankPressureKPaGauge: 0,
      });
      return point.kind === "flowing" ? point.permeateLPerH : 0;
    };
    expect(flow(8)).toBeGreaterThan(flow(12));
  });
  it("a larger tank can be short for longer: from below the minimum pressure it takes longer to come back above it", () => {
    const minimumKPaGauge = 138;
    const backAbove = (volumeL: number) => {
      const unit = simpleUnit(
        { areaM2: 1.2, waterLPerM2HBar: 4, saltLPerM2H: 0.6 },
        { ratedLPerH: 60, ratedKPa: 414 },
        { volumeL, airChargeKPaGauge: 50 },
      );
      // Filling from empty up to the minimum: until then the appliance gets nothing it accepts.
      const filled = filling(
        { ...unit, shutOff: { ratio: 1 } },
        { feedPressureKPaGauge: 400, temperatureC: 15, feedMgPerL: 300 },
        { staticFeedKPaGauge: minimumKPaGauge },
      );
      return filled.kind === "known" ? filled.value.hours : Number.NaN;
    };
    expect(backAbove(106)).toBeGreaterThan(1.9 * backAbove(53));
    const usable = (volumeL: number) =>
      usableLitres({ volumeL, airChargeKPaGauge: 50 }, { fullKPaGauge: 256, minimumKPaGauge }, 101.325);
    expect(usable(106)).toBeGreaterThan(usable(53));
  });
});
