import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as ro from "./index.ts";
import { readTable } from "./internal/read-table.test-helper.ts";

const psi = 6.894757;
const near = (value: number, expected: number, tolerance: number) =>
  expect(Math.abs(value - expected), `${value} against ${expected}`).toBeLessThanOrEqual(tolerance);
const factor = (form: ro.TemperatureFormId, t: number) => ro.temperatureForms[form].factor(t);

describe("temperature factors", () => {
  it("T1–T5: US Army TM 10-4610-309-14, Table 3, all 79 points (two decimals, fit within 0.005 before rounding)", () => {
    const rows = readTable(readFileSync("reference/us-army-tcf/data.csv", "utf8"));
    expect(rows).toHaveLength(79);
    for (const row of rows) {
      const t = (Number(row.temperature_F) - 32) / 1.8;
      near(factor("1.028^(T-25) (US Army)", t), Number(row.tcf_dimensionless), 0.0055);
    }
  });
  it("T6–T9: the other forms (common practice; 3 %/°C from the WQA kit)", () => {
    near(factor("K=3020/2640", 10), 0.5844, 0.0005);
    near(factor("K=3020/2640", 30), 1.1574, 0.0005);
    near(factor("1.03^(T-25)", 10), 0.6419, 0.0005);
    near(factor("K=2700", 10), 0.62, 0.002);
    near(factor("K=2700", 15), 0.73, 0.002);
    near(factor("K=2700", 30), 1.161, 0.002);
  });
  it("T10: the forms spread from 0.584 to 0.661 at 10 °C, all below viscosity's 0.6815", () => {
    const all = Object.values(ro.temperatureForms).map((form) => form.factor(10));
    near(Math.min(...all), 0.584, 0.001);
    near(Math.max(...all), 0.661, 0.001);
    near(ro.waterViscosityMPaS(25) / ro.waterViscosityMPaS(10), 0.6815, 0.001);
  });
});

describe("standardising", () => {
  const brine = 500 * ro.logMeanFactor(0.2);
  const drive = (feed: number, permeate: number) =>
    ro.netDrivingPressure({
      feed,
      vesselDrop: 2,
      permeate,
      osmoticFeedBrine: ro.osmoticRuleOfThumbPsi(brine),
      osmoticPermeate: ro.osmoticRuleOfThumbPsi(25),
    });
  const flow = (form: ro.TemperatureFormId) =>
    ro.standardPermeateFlow(
      100,
      { drive: drive(58, 20), temperatureFactor: factor(form, 12) },
      { drive: drive(50, 0), temperatureFactor: 1 },
    );
  it("N1–N3: log mean, balance and conductivity (UNSW Desal Wiki)", () => {
    for (const [y, f] of [
      [0.15, 1.0835],
      [0.2, 1.1157],
      [0.22, 1.1294],
      [0.25, 1.1507],
      [0.5, 1.3863],
      [0.75, 1.8484],
    ] as const)
      near(ro.logMeanFactor(y), f, 1e-4);
    near(ro.concentrationFactor(0.22, 1), 1.2821, 1e-4);
    near(ro.concentrationFactor(0.22, 0.96), 1.2708, 1e-4);
    near(ro.osmoticFromConductivityPsi(1000, 0.2), 6.694, 0.001);
  });
  it("N4, N5: ASTM D4516-19a 6.1", () => {
    near(drive(58, 20), 31.671, 0.001);
    near(flow("1.03^(T-25)"), 202.49, 0.05);
    near(flow("K=3020/2640"), 218.92, 0.05);
  });
  it("N6, N7: salt passage; the water factor in place of the salt factor would say 3.63 for 5.27 %", () => {
    const at = (permeateFlow: number, saltTemperatureFactor: number) => ({
      permeateFlow,
      saltTemperatureFactor,
      feedConcentration: 500,
      feedBrineConcentration: brine,
    });
    const passage = (salt: number) => ro.standardSaltPassage(5, at(100, salt), at(flow("1.03^(T-25)"), 1));
    near(passage(factor("1.03^(T-25)", 12)), 3.626, 0.005);
    near(passage(ro.saltTemperatureFactor(12)), 5.267, 0.005);
  });
  it("N8: vessel drop (UNSW Desal Wiki, revision 172)", () =>
    near(ro.standardVesselDrop(10, { actual: 80, standard: 100 }, 15), 11.6, 0.001));
});

describe("osmotic pressure", () => {
  it("O1–O5, O7: Pitzer & Mayorga 1973", () => {
    near(ro.naclOsmoticCoefficient(0.1), 0.932, 0.002);
    near(ro.naclOsmoticCoefficient(1), 0.936, 0.002);
    for (const [c, bar] of [
      [300, 0.248],
      [750, 0.614],
      [2000, 1.612],
    ] as const)
      near(ro.naclOsmoticPressureKPa(c, 25) / 100 / bar, 1, 0.01);
    near(
      (ro.naclOsmoticCoefficient(0.1) * ro.idealOsmoticPressureKPa(0.2 * 0.99705, 25)) / 101.325,
      4.55,
      0.023,
    );
  });
  it("O6, O8, O9: ideal textbook figures (Geankoplis 13.9-1, Kotz ch. 13) and the rule of thumb", () => {
    near(ro.idealOsmoticPressureKPa(0.2 * 0.997, 25) / 101.325, 4.88, 0.01);
    expect(ro.osmoticRuleOfThumbPsi(1000)).toBe(10);
    near(ro.idealOsmoticPressureKPa(1.103, 24.85) / 101.325, 27, 0.1);
  });
  it("O10: activity coefficients, J. Phys. Chem. Ref. Data 13(1) (1984) p. 53, 0.5 %", () => {
    for (const [m, g] of [
      [0.1, 0.778],
      [0.5, 0.681],
      [1, 0.657],
      [2, 0.669],
    ] as const)
      near(ro.naclActivityCoefficient(m) / g, 1, 0.005);
  });
});

describe("transport", () => {
  it("S2–S7: diffusivity (phreeqc.dat) and Schock & Miquel (from memory)", () => {
    near(ro.saltDiffusivity(1.33, 2.033), 1.608, 0.0016);
    const water = { kinematicM2PerS: 8.929e-7, densityKgPerM3: 997.05, diffusivityM2PerS: 1.608e-9 };
    const at = (speedMPerS: number) =>
      ro.spacerChannelTransport({ heightMm: 0.711, porosity: 0.9 }, { speedMPerS, fluxLPerM2H: 20 }, water);
    const t = at(0.1);
    near(t.hydraulicDiameterMm, 0.9141, 0.001);
    near(t.sherwood, 18.11, 0.09);
    near(t.massTransferMPerS, 3.186e-5, 2e-7);
    near(t.frictionFactor, 1.554, 0.008);
    near(t.gradientKPaPerM, 8.47, 0.042);
    near(t.polarisation, 1.19, 0.006);
    expect(at(0.02).withinRange).toBe(false);
    for (const [j, r] of [
      [16, 97],
      [8, 94.1],
      [4, 88.9],
    ] as const)
      near(ro.wallRejection(j, 0.5) * 100, r, 0.1);
  });
  it("S8: element at ASTM D5615 conditions, plug flow", () => {
    const element = { areaM2: 0.4, waterLPerM2HBar: 5, saltLPerM2H: 0.5 };
    const unit = ro.simpleUnit(element, { ratedLPerH: 28.905 - 6.3591, ratedKPa: 345 });
    const conditions = {
      feedPressureKPaGauge: 345,
      temperatureC: 25,
      feedMgPerL: 300,
      tankPressureKPaGauge: 0,
    };
    const point = ro.operatingPoint(unit, conditions);
    if (point.kind !== "flowing") throw new Error(point.kind);
    near(point.permeateLPerH / 6.3591, 1, 0.003);
    near(point.permeateMgPerL / 10.3, 1, 0.003);
    near(point.concentrateMgPerL / 381.7, 1, 0.003);
    near(point.rejection * 100, 96.57, 0.02);
  });
});

describe("flows, tank and tubing", () => {
  it("F1–F4: efficiency (EPA P101CQSP), recovery, rejection", () => {
    near(ro.efficiency(1, 5) * 100, 16.67, 0.01);
    near(ro.efficiency(1, 2.3) * 100, 30.3, 0.01);
    near(ro.recovery(10, 40), 0.2, 1e-12);
    near(ro.rejection(380, 5) * 100, 98.7, 0.1);
    near(ro.rejection(500, 75), 0.85, 1e-12);
  });
  it("P1, P2, K10: shut-off (common practice)", () => {
    near(ro.shutOffPressureKPaGauge(60, 2 / 3), 40, 1e-9);
    near(ro.shutOffPressureKPaGauge(50, 2 / 3), 33.3, 0.1);
  });
  it("K01–K04: drawdown, The Driller 84709 and National Driller 86087", () => {
    const share = (a: number, b: number, c: number, atm = 14.7) =>
      ro.drawdownShare({ charge: a + atm, cutIn: b + atm, cutOut: c + atm });
    near(85 * share(28, 30, 50), 25.1, 0.05);
    near(85 * share(28, 30, 50, 11.8), 26.19, 0.15);
    near(share(18, 20, 40), 0.3446, 0.0005);
    near(share(38, 40, 60), 0.2579, 0.0005);
  });
  it("P3, K05–K07: acceptance in absolute pressures, not 0.825; sudden 0.4834", () => {
    const tank = { volumeL: 1, airChargeKPaGauge: 7 * psi };
    near(ro.storedLitres(tank, 40 * psi, 14.7 * psi), 0.6033, 0.0005);
    near(ro.polytropicShare({ charge: 21.7, full: 54.7 }, 1.4), 0.4834, 0.0005);
  });
  it("K08, K09: usable water; best at charge = minimum", () => {
    const swing = { fullKPaGauge: 40 * psi, minimumKPaGauge: 20 * psi };
    const gal = (charge: number, n = 1) =>
      ro.usableLitres({ volumeL: 14, airChargeKPaGauge: charge * psi }, swing, 14.7 * psi, n);
    near(gal(7), 3.201, 0.005);
    near(gal(7, 1.2), 2.562, 0.005);
    near(gal(7, 1.4), 2.134, 0.005);
    near(gal(20), 5.119, 0.005);
    near(gal(25), 3.839, 0.005);
  });
  it("K12: fill time, closed form", () => {
    const hours = ro.constantFillHours({
      tankVolumeL: 14,
      airChargeKPaGauge: 7,
      fullKPaGauge: 40,
      effectiveFeedKPaGauge: 55,
      permeabilityLPerHKPa: 2 / 24,
      atmosphericKPa: 14.7,
    });
    near(hours / 3.021, 1, 0.005);
  });
  it("K13–K16: tubing; in transition an interval; Hazen–Williams reads low", () => {
    const small = { boreMm: 4.318, lengthM: 3.048 };
    const large = { boreMm: 6.35, lengthM: 3.048 };
    near(ro.hazenWilliamsHeadM({ boreMm: 6.35, lengthM: 30.48 }, 227.125, 150) / 0.3048 / 83.54, 1, 0.005);
    near(ro.tubeDrop(small, 18, 20).highKPa / 1.789, 1, 0.01);
    near(ro.tubeDrop(small, 90, 20).highKPa / 35.22, 1, 0.03);
    near(ro.tubeDrop(large, 227.125, 20).highKPa / 28.09, 1, 0.03);
    const between = ro.tubeDrop(small, 30, 20);
    expect(between.regime).toBe("transition");
    near(between.lowKPa / psi, 0.43, 0.01);
    near(between.highKPa / psi, 0.74, 0.01);
  });
  it("K17–K20: capillary and orifice; Hagen–Poiseuille refused beyond its range", () => {
    const fine = ro.capillaryFlow({ boreMm: 0.3, lengthM: 0.5 }, 400, 20);
    near(fine.flowLPerH / 0.06 / 9.527, 1, 0.005);
    near(fine.reynolds, 672, 4);
    const wide = ro.capillaryFlow({ boreMm: 0.6, lengthM: 0.3 }, 60 * psi, 20);
    expect(wide.regime).toBe("beyond-laminar");
    near(wide.flowLPerH / 0.06 / 105, 1, 0.2);
    near(ro.orificeFlowLPerH(0.8, 60 * psi, 20) / 0.06 / 538, 1, 0.01);
    const at = (t: number) => ro.capillaryFlow({ boreMm: 0.3, lengthM: 0.5 }, 400, t).flowLPerH;
    near(at(10) / at(25), 0.6815, 0.001);
  });
  it("K21, K22: IAPWS density and viscosity", () => {
    for (const row of readTable(readFileSync("reference/iapws-water/data.csv", "utf8"))) {
      const t = Number(row.temperature_C);
      near(ro.waterViscosityMPaS(t) / Number(row.viscosity_mPa_s), 1, 0.002);
      near(ro.waterDensityKgPerM3(t), Number(row.density_kg_m3), 0.01);
    }
  });
  it("K23, H1–H3: oxygen (SWAT+ 7:3.5.3), carbonic acid (phreeqc.dat), permeate pH", () => {
    near(ro.dissolvedOxygenMgPerL(10), 11.29, 0.02);
    near(ro.dissolvedOxygenMgPerL(20), 9.09, 0.02);
    near(ro.dissolvedOxygenMgPerL(25), 8.26, 0.02);
    near(ro.carbonicPk1(25), 6.352, 0.002);
    near(ro.carbonicPk1(10), 6.463, 0.002);
    near(ro.freeCarbonDioxideMgPerL({ ph: 7.6, bicarbonateMgPerL: 150 }, 25) / 6.11, 1, 0.01);
    near(ro.permeatePh(7.6, 0.05), 6.3, 0.02);
    near(ro.permeatePh(7.6, 0.1), 6.6, 0.02);
  });
});
