import { describe, expect, it } from "vitest";
import { deliveredLPerH } from "./delivered-flow.ts";
import { filling } from "./filling.ts";
import { fillingSays } from "./filling-says.ts";
import { operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";
import { storedLitres } from "./tank.ts";
import { tubeDrop } from "./tube-drop.ts";
import type { Unit } from "./unit.ts";

// Hand calculations and limiting cases: what must hold whatever the constants are.
const element = { areaM2: 1.2, waterLPerM2HBar: 4, saltLPerM2H: 0.6, polarisation: 1.1 };
const rated = { ratedLPerH: 60, ratedKPa: 414 };
const tank = { volumeL: 53, airChargeKPaGauge: 50 };
const unit = simpleUnit(element, rated, tank);
const at = { feedPressureKPaGauge: 400, temperatureC: 15, feedMgPerL: 300, tankPressureKPaGauge: 100 };
const point = (u: Unit, c = at) => {
  const found = operatingPoint(u, c);
  if (found.kind !== "flowing") throw new Error(found.kind);
  return found;
};
const filled = (u: Unit) => {
  const found = filling(u, at);
  if (found.kind !== "known") throw new Error(JSON.stringify(found));
  return found.value;
};
const [one] = unit.elements;
const twice = (arrangement: "series" | "parallel"): Unit => ({
  ...unit,
  elements: [one!, one!],
  arrangement,
});
const double: Unit = { ...unit, elements: [{ ...one!, areaM2: 2.4 }] };

describe("two elements", () => {
  it.each(["parallel", "series"] as const)(
    "two equal ones in %s without friction are one of double area",
    (how) => {
      const [two, large] = [point(twice(how)), point(double)];
      expect(two.permeateLPerH / large.permeateLPerH).toBeCloseTo(1, how === "parallel" ? 9 : 4);
      expect(two.permeateMgPerL / large.permeateMgPerL).toBeCloseTo(1, how === "parallel" ? 9 : 3);
    },
  );
  it("with friction, series loses more pressure at the concentrate end than parallel", () => {
    const friction = { dropKPa: 10, atLPerH: 60 };
    const rough = (how: "series" | "parallel"): Unit => ({
      ...twice(how),
      elements: [
        { ...one!, friction },
        { ...one!, friction },
      ],
    });
    expect(point(rough("series")).concentratePressureKPaGauge).toBeLessThan(
      point(rough("parallel")).concentratePressureKPaGauge,
    );
  });
});

describe("tanks", () => {
  it("two equal tanks are one of the sum: litres, hours, dissolved solids", () => {
    const two = filled({ ...unit, tanks: [tank, tank] });
    const large = filled({ ...unit, tanks: [{ ...tank, volumeL: 106 }] });
    expect(two.hours / large.hours).toBeCloseTo(1, 6);
    expect(two.storedL / large.storedL).toBeCloseTo(1, 9);
    expect(two.meanMgPerL / large.meanMgPerL).toBeCloseTo(1, 6);
  });
  it("two tanks of different charge hold the sum of Boyle's law for each", () => {
    const other = { volumeL: 20, airChargeKPaGauge: 90 };
    const both = filled({ ...unit, tanks: [tank, other] });
    const sum = [tank, other].reduce((l, one) => l + storedLitres(one, both.shutOffKPaGauge, 101.325), 0);
    expect(both.storedL).toBeCloseTo(sum, 6);
  });
  it("a vented tank fills at the open flow all the way: hours = litres over flow", () => {
    const vented: Unit = { ...unit, storage: "vented", tanks: [{ volumeL: 100, airChargeKPaGauge: 0 }] };
    const open = point(unit, { ...at, tankPressureKPaGauge: 0 });
    expect(filled(vented).hours).toBeCloseTo(100 / open.permeateLPerH, 6);
    expect(filled(vented).meanMgPerL).toBeCloseTo(open.permeateMgPerL, 6);
    expect(filled(vented).efficiency).toBeCloseTo(open.recovery, 6);
  });
  it("the pump behind a vented tank: valve and curve meet (240 L/h at 200 kPa; 200 kPa less at 480 L/h²: hand calculation)", () => {
    // (Q/240)²·200 = 300·(1 − (Q/600)²) → Q² (200/57600 + 300/360000) = 300
    const rePressure = { shutOffRiseKPa: 300, openFlowLPerH: 600 };
    const flow = Math.sqrt(300 / (200 / 57600 + 300 / 360000));
    expect(deliveredLPerH({ ...unit, storage: "vented", rePressure }, 0, 15)).toBeCloseTo(flow, 2);
  });
  it("higher up the same gauge pressures store more (Boyle; The Driller 84709 with National Driller 86087)", () => {
    const high = filled({ ...unit, atmosphericKPa: 81.4 });
    expect(high.storedL).toBeGreaterThan(filled(unit).storedL);
    expect(high.storedL).toBeCloseTo(53 * (1 - (50 + 81.4) / (high.shutOffKPaGauge + 81.4)), 6);
  });
});

describe("booster and tubes", () => {
  it("a booster with a flat curve is that much more feed pressure", () => {
    const flat = { shutOffRiseKPa: 200, openFlowLPerH: 1e9 };
    const more = point({ ...unit, booster: flat });
    expect(more.permeateLPerH).toBeCloseTo(
      point(unit, { ...at, feedPressureKPaGauge: 600 }).permeateLPerH,
      6,
    );
  });
  it("on its curve: rise = rise at no flow × (1 − (Q/open)²) at the flow found", () => {
    const found = point({ ...unit, booster: { shutOffRiseKPa: 200, openFlowLPerH: 150 } });
    expect(found.afterFilterKPaGauge).toBeCloseTo(400 + 200 * (1 - (found.feedLPerH / 150) ** 2), 5);
  });
  it("a feed tube takes what Darcy–Weisbach says at the flow found", () => {
    const tube = { boreMm: 4.318, lengthM: 10 };
    const found = point({ ...unit, feedTubes: [tube] });
    const loss = tubeDrop(tube, found.feedLPerH, 15);
    expect(loss.regime).toBe("turbulent");
    expect(found.elementPressureKPaGauge).toBeCloseTo(400 - loss.lowKPa, 4);
  });
  it("permeate tubes add their loss to the tank's pressure at the membrane", () => {
    const tube = { boreMm: 2, lengthM: 6 };
    const found = point({ ...unit, permeateTubes: [tube] });
    const loss = tubeDrop(tube, found.permeateLPerH, 15);
    expect(loss.regime).toBe("laminar");
    expect(found.permeatePressureKPaGauge - 100).toBeCloseTo(loss.lowKPa, 2);
    expect(found.permeateLPerH).toBeLessThan(point(unit).permeateLPerH);
  });
  it("a drain tube and an orifice share the pressure", () => {
    const tube = { boreMm: 3, lengthM: 20 };
    const found = point({ ...unit, drainTubes: [tube] });
    const overRestrictor = 414 * (found.concentrateLPerH / 60) ** 2;
    const { lowKPa, highKPa } = tubeDrop(tube, found.concentrateLPerH, 15);
    const left = found.concentratePressureKPaGauge - overRestrictor;
    expect(left).toBeGreaterThanOrEqual(lowKPa - 0.01);
    expect(left).toBeLessThanOrEqual(highKPa + 0.01);
  });
  it("blend: mass balance of the mixed water", () => {
    const mixed = point({ ...unit, blendFraction: 0.2 });
    expect(mixed.productLPerH).toBeCloseTo(mixed.permeateLPerH + mixed.blendLPerH, 9);
    expect(mixed.productLPerH * mixed.productMgPerL).toBeCloseTo(
      mixed.permeateLPerH * mixed.permeateMgPerL + mixed.blendLPerH * 300,
      6,
    );
  });
});

describe("a measured filling time, backwards", () => {
  it("gives back the permeability it was made with", () => {
    const worn = { ...unit, elements: [{ ...one!, waterLPerM2HBar: 2.8 }] };
    const { waterRatio } = fillingSays(unit, at, { value: filled(worn).hours, u: 0.05 });
    if (waterRatio.kind !== "known") throw new Error(waterRatio.kind);
    expect(waterRatio.value.value).toBeCloseTo(0.7, 5);
    expect(waterRatio.value.u).toBeGreaterThan(0);
  });
  it("half the room for water fills in half the time", () => {
    const half = { ...unit, tanks: [{ ...tank, volumeL: 26.5 }] };
    const { tankRatio } = fillingSays(unit, at, { value: filled(half).hours, u: 0 });
    expect(tankRatio).toMatchObject({ kind: "known" });
    if (tankRatio.kind === "known") expect(tankRatio.value.value).toBeCloseTo(0.5, 9);
  });
  it("says so when no element could be that fast", () => {
    expect(fillingSays(unit, at, { value: 0.001, u: 0 }).waterRatio.kind).toBe("refused");
  });
});
