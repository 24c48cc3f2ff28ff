import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FaultId, faults } from "./faults.ts";
import { operatingPoint } from "./operating-point.ts";
import type { Situation } from "./situation.ts";
import { unitReadings } from "./unit-readings.ts";

const runs: Readonly<Record<string, number>> = { ci: 5000, soak: 100_000 };
const numRuns = runs[process.env.TAPSIDE_DEPTH ?? ""] ?? 1000;
const d = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
const tube = fc.record({ boreMm: d(2, 8), lengthM: d(0.1, 30), fittingsK: d(0, 10) });
const pump = fc.record({ shutOffRiseKPa: d(20, 500), openFlowLPerH: d(30, 500) });
const permeatePump = fc.record({
  strokeRatio: d(0.2, 12),
  lossKPa: d(0, 150),
  slip: d(0, 0.95),
  inletKPa: d(0, 120),
  stuck: fc.boolean(),
});
const element = fc.record({
  areaM2: d(0.1, 3),
  waterLPerM2HBar: d(0.2, 12),
  saltLPerM2H: d(0.01, 8),
  polarisation: d(1, 2.2),
  temperatureForm: fc.constantFrom("1.03^(T-25)" as const, "K=2700" as const),
  leakLPerHBar: d(0, 0.5),
  friction: fc.record({ dropKPa: d(0, 40), atLPerH: d(30, 200) }),
});
const cartridge = fc.record({ id: fc.constant("filter"), dropKPa: d(0, 40), atLPerH: d(40, 150) });
const restrictor = fc.oneof(
  fc.record({ kind: fc.constant("rated" as const), ratedLPerH: d(0.5, 150), ratedKPa: d(200, 500) }),
  fc.record({ kind: fc.constant("capillary" as const), boreMm: d(0.2, 1), lengthM: d(0.1, 1) }),
  fc.record({ kind: fc.constant("orifice" as const), boreMm: d(0.2, 1) }),
);
const situations: fc.Arbitrary<Situation> = fc
  .record({
    unit: fc.record({
      cartridges: fc.array(cartridge, { maxLength: 4 }),
      feedTubes: maybe(fc.array(tube, { maxLength: 2 })),
      booster: maybe(pump),
      elements: fc.array(element, { minLength: 1, maxLength: 2 }),
      arrangement: fc.constantFrom("series" as const, "parallel" as const),
      restrictor,
      drainTubes: maybe(fc.array(tube, { maxLength: 1 })),
      shutOff: fc.record({ ratio: d(0.5, 0.8) }),
      tanks: fc.array(fc.record({ volumeL: d(5, 200), airChargeKPaGauge: d(0, 200) }), { maxLength: 2 }),
      storage: fc.constantFrom("pressurised" as const, "vented" as const),
      rePressure: maybe(pump),
      permeatePump: maybe(permeatePump),
      permeateTubes: maybe(fc.array(tube, { maxLength: 1 })),
      blendFraction: maybe(d(0, 0.6)),
      outletCartridges: maybe(fc.array(cartridge, { maxLength: 2 })),
      outletTubes: maybe(fc.array(tube, { maxLength: 2 })),
      softenerPasses: maybe(d(0, 1)),
      atmosphericKPa: d(60, 103),
    }),
    conditions: fc.record({
      feedPressureKPaGauge: d(0, 900),
      temperatureC: d(0, 45),
      feedMgPerL: d(0, 5000),
      tankPressureKPaGauge: d(0, 600),
    }),
  })
  .map((s) => JSON.parse(JSON.stringify(s)) as Situation);
const troubles = fc.array(
  fc.record({ id: fc.constantFrom(...(Object.keys(faults) as FaultId[])), share: d(0, 1) }),
  { maxLength: 3 },
);
const troubled = (situation: Situation, list: readonly { id: FaultId; share: number }[]) =>
  list.reduce(
    (s, { id, share }) => faults[id].apply(s, faults[id].low + share * (faults[id].high - faults[id].low)),
    situation,
  );

describe("random units of all parts, faults included", () => {
  it("each ends in an answer or a named outcome, water and salt close to 1e-9, recovery is in [0, 1)", () => {
    fc.assert(
      fc.property(situations, troubles, (situation, list) => {
        const { unit, conditions } = troubled(situation, list);
        const point = operatingPoint(unit, conditions);
        if (point.kind === "refused") throw new Error(`${point.code} ${JSON.stringify(point.detail)}`);
        for (const value of Object.values(point)) if (typeof value === "number") expect(value).not.toBeNaN();
        if (point.kind !== "flowing") return;
        const { feedLPerH, feedMgPerL, permeateLPerH, permeateMgPerL, concentrateLPerH, concentrateMgPerL } =
          point;
        expect(Math.abs(permeateLPerH + concentrateLPerH - feedLPerH)).toBeLessThanOrEqual(1e-9 * feedLPerH);
        const salt = feedLPerH * feedMgPerL;
        const out = permeateLPerH * permeateMgPerL + concentrateLPerH * concentrateMgPerL;
        expect(Math.abs(out - salt)).toBeLessThanOrEqual(1e-9 * salt + 1e-12);
        expect(point.recovery).toBeGreaterThanOrEqual(0);
        expect(point.recovery).toBeLessThan(1);
        const product = point.productLPerH * point.productMgPerL;
        const parts = permeateLPerH * permeateMgPerL + point.blendLPerH * feedMgPerL;
        expect(Math.abs(product - parts)).toBeLessThanOrEqual(1e-9 * parts + 1e-12);
      }),
      { numRuns },
    );
  });
  it("every port reads a finite number or is left out", () => {
    fc.assert(
      fc.property(situations, troubles, (situation, list) => {
        const read = unitReadings(troubled(situation, list), { segments: 5 });
        if (read.kind !== "known") throw new Error(JSON.stringify(read));
        for (const [port, value] of Object.entries(read.value)) {
          expect(Number.isFinite(value), port).toBe(true);
          expect(value, port).toBeGreaterThanOrEqual(-1e-9);
        }
      }),
      { numRuns: Math.ceil(numRuns / 10) },
    );
  });
});
