import type { UnitFile } from "@tapside/records";
import { LINES } from "@tapside/reverse-osmosis";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assess } from "./assess.ts";
import { context, cup, fileOf, N1, ppm, type TypedReadings, visitOf } from "./testing/build.ts";
import { unitAsRead } from "./unit-as-read.ts";

type Unit = Parameters<typeof fileOf>[1];
const psi = 6.894757;

const judge = (unit: Unit, readings: TypedReadings, ...before: UnitFile["visits"]) =>
  assess(
    fileOf("Mill Hollow infants", unit, [], [...before, visitOf("today", "annual", "2026-11-25", readings)]),
    "today",
    context,
  );
const today = (temperatureC: number, kPa = 60 * psi): TypedReadings => ({
  beforeFilterPressure: [kPa, "kPa"],
  feedTemperature: [temperatureC, "°C"],
  feedTds: ppm(N1.testFeedMgPerL!),
});
const expected = (unit: Unit, readings: TypedReadings, ...before: UnitFile["visits"]) => {
  const one = judge(unit, readings, ...before).expected;
  if (one.kind !== "known") throw new Error(JSON.stringify(one));
  return one.value;
};
const drainMLPerMin = (unit: Unit, readings: TypedReadings, ...before: UnitFile["visits"]) =>
  1000 * expected(unit, readings, ...before).drainFlow!.value;

// 0.6 mm × 0.3 m passes about 105 mL/min (±20 %) beyond its laminar range; 0.8 mm as a sharp hole 538 mL/min, both at 60 psi and 20 °C.
const wide: Unit = { ...N1, restrictorKind: "capillary", restrictorBoreMm: 0.6, restrictorLengthM: 0.3 };
const hole: Unit = { ...N1, restrictorKind: "orifice", restrictorBoreMm: 0.8 };
// Fine enough to stay laminar at tap pressure: Re 672 at 400 kPa.
const fine: Unit = { ...N1, restrictorKind: "capillary", restrictorBoreMm: 0.3, restrictorLengthM: 0.5 };

describe("the restrictor as found, in what a sound unit should read", () => {
  it("drains what bore and length let by; filters and friction take 1 to 8 % of the pressure", () => {
    expect(drainMLPerMin(wide, today(20)) / 105).toBeGreaterThan(0.75);
    expect(drainMLPerMin(wide, today(20)) / 105).toBeLessThan(1.2);
    expect(drainMLPerMin(hole, today(20)) / 538).toBeGreaterThan(0.93);
    expect(drainMLPerMin(hole, today(20)) / 538).toBeLessThan(1);
  });
  it("a laminar capillary slows in cold water as its viscosity says (0.6815 from 25 to 10 °C), a hole hardly", () => {
    const share = (unit: Unit) => drainMLPerMin(unit, today(10)) / drainMLPerMin(unit, today(25));
    expect(share(fine)).toBeCloseTo(0.6815, 1);
    expect(Math.abs(share(fine) / 0.6815 - 1)).toBeLessThan(0.03);
    expect(Math.abs(share(hole) - 1)).toBeLessThan(0.02);
  });
  it("beyond its laminar range the interval is wider and the record says ± 20 %", () => {
    const spread = (unit: Unit) => {
      const { low, high, value } = expected(unit, today(20)).drainFlow!;
      return (high - low) / value;
    };
    expect(spread(wide)).toBeGreaterThan(spread(fine));
    const said = (unit: Unit) => judge(unit, today(20)).assumed.find((one) => one.id === "beyondLaminar");
    expect(said(wide)).toEqual({ id: "beyondLaminar", value: 20, unit: "%", origin: "house" });
    expect(said(fine)).toBeUndefined();
  });
  it("what it is known by is named as of the unit's record", () => {
    const assumed = judge(fine, today(20)).assumed;
    expect(assumed).toContainEqual({ id: "restrictorBoreMm", value: 0.3, unit: "mm", origin: "unit" });
    expect(assumed).toContainEqual({ id: "restrictorLengthM", value: 0.5, unit: "m", origin: "unit" });
    expect(assumed.find((one) => one.id === "usualDrain")).toBeUndefined();
  });
  it("a kind whose numbers are missing stands for nothing: the label's drain is taken", () => {
    const half: Unit = { ...N1, restrictorKind: "capillary", restrictorBoreMm: 0.3 };
    expect(expected(half, today(20)).drainFlow).toEqual(expected(N1, today(20)).drainFlow);
  });
});

const read = (drainLPerH: number): TypedReadings => ({
  ...today(25, N1.testPressureKPaGauge!),
  afterFilterPressure: [N1.testPressureKPaGauge!, "kPa"],
  permeateTds: ppm(N1.testFeedMgPerL! * (1 - N1.ratedRejectionPercent! / 100)),
  permeateFlow: cup(1, 3600 / N1.ratedPermeateLPerH!),
  drainFlow: cup(0.01, (3600 * 0.01) / drainLPerH),
});

describe("once its drain was read", () => {
  const before = visitOf("before", "commissioning", "2026-01-10", read(30));
  it("the reading says how much, its kind how it changes with cold", () => {
    for (const [unit, share] of [
      [fine, 0.6815],
      [hole, 0.9987],
      [N1, 1],
    ] as const) {
      const at = (c: number) => drainMLPerMin(unit, today(c, N1.testPressureKPaGauge!), before);
      expect(at(25)).toBeGreaterThan(0.93 * (30 / 0.06));
      expect(at(25)).toBeLessThan(30 / 0.06);
      expect(Math.abs(at(10) / at(25) / share - 1)).toBeLessThan(0.03);
    }
  });
  it("a drain far from what the found restrictor passes is asked about", () => {
    const asked = (unit: Unit, drain: number) =>
      judge(unit, read(drain)).questions.filter(({ id }) => id === "drainAgainstRestrictor");
    // 0.8 mm passes 538 mL/min at 60 psi: 32.3 L/h.
    expect(asked(hole, 32)).toEqual([]);
    expect(asked(hole, 70)).toMatchObject([{ detail: { ratio: expect.closeTo(70 / 32.3, 1) } }]);
  });
});

describe("lines with a length", () => {
  const lines: Unit = { ...N1, feedTubeLengthM: 3.048, drainTubeLengthM: 3.048, permeateTubeLengthM: 3.048 };
  it("take pressure: the gauge after the filters stands lower, less drains and less is made", () => {
    const [with_, without] = [expected(lines, today(20)), expected(N1, today(20))];
    // 5.11 psi in 10 ft of 0.170 in at 1.5 L/min, about as Q^1.75: 5.11 · (Q/1.5)^1.75.
    const throughLPerMin = with_.drainFlow!.value + with_.permeateFlow!.value;
    const wanted = 5.11 * (throughLPerMin / 1.5) ** 1.75;
    const fall = without.afterFilterPressure!.value - with_.afterFilterPressure!.value;
    expect(Math.abs(fall / wanted - 1)).toBeLessThan(0.15);
    expect(with_.drainFlow!.value).toBeLessThan(without.drainFlow!.value);
    expect(with_.permeateFlow!.value).toBeLessThan(without.permeateFlow!.value);
  });
  it("what was read through them is read again the same: they are not counted twice", () => {
    const before = visitOf("before", "commissioning", "2026-01-10", read(30));
    const model = unitAsRead(fileOf("Mill Hollow infants", lines, [], [before]), context);
    if (model.kind !== "known") throw new Error(model.kind);
    const again = expected(lines, today(25, N1.testPressureKPaGauge!), before);
    const plain = expected(N1, today(25, N1.testPressureKPaGauge!), before);
    // Only the line through the filters, which the reading after them does not hold, takes from it.
    const kPaLess = (plain.afterFilterPressure!.value - again.afterFilterPressure!.value) * psi;
    const share = 1 - kPaLess / N1.testPressureKPaGauge!;
    expect(again.drainFlow!.value / plain.drainFlow!.value).toBeGreaterThan(share - 0.005);
    expect(again.permeateFlow!.value / plain.permeateFlow!.value).toBeGreaterThan(share - 0.02);
    expect(model.value.unit.drainTubes).toEqual([{ boreMm: 4.318, lengthM: 3.048 }]);
  });
  it("are named with their bore: the usual one as a default, a measured one as of the record", () => {
    const bore = (unit: Unit) => judge(unit, today(20)).assumed.find((one) => one.id === "drainTubeBore");
    expect(bore(lines)).toEqual({ id: "drainTubeBore", value: 4.318, unit: "mm", origin: "house" });
    expect(bore({ ...lines, drainTubeBoreMm: 6 })).toMatchObject({ value: 6, origin: "unit" });
    expect(bore(N1)).toBeUndefined();
  });
});

describe("whatever is written of restrictor and lines", () => {
  const number = fc.oneof(fc.constantFrom(0, -1, 1e-9, 1e9), fc.double({ min: 0.01, max: 50, noNaN: true }));
  const numbers = fc.record(
    Object.fromEntries(
      [
        "restrictorLPerH",
        "restrictorAtKPaGauge",
        "restrictorAtC",
        "restrictorBoreMm",
        "restrictorLengthM",
        ...LINES.flatMap((line) => [`${line}TubeLengthM`, `${line}TubeBoreMm`]),
      ].map((field) => [field, number]),
    ),
    { requiredKeys: [] },
  );
  const kinds = fc.record(
    {
      restrictorKind: fc.constantFrom("rated", "capillary", "orifice", "measured"),
      restrictorLaw: fc.constantFrom("laminar", "orifice"),
    },
    { requiredKeys: [] },
  );
  const lost = (value: unknown): boolean =>
    typeof value === "number"
      ? !Number.isFinite(value)
      : typeof value === "object" && value !== null && Object.values(value).some(lost);

  it("is judged, or named, never with a number that is none", () => {
    const before = visitOf("before", "commissioning", "2026-01-10", read(30));
    fc.assert(
      fc.property(kinds, numbers, fc.boolean(), (kind, more, seen) => {
        const unit = { ...N1, tankL: 53, ...kind, ...more } as Unit;
        expect(lost(judge(unit, { ...read(25), ...today(7) }, ...(seen ? [before] : [])))).toBe(false);
      }),
      { numRuns: 150 },
    );
  });
});
