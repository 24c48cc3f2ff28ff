import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { naclOsmoticPressureKPa } from "./nacl-osmotic-pressure.ts";
import { operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";

const numRuns = process.env.TAPSIDE_DEPTH ? 100_000 : 3000;
const d = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const units = fc.record({
  area: d(0.1, 3),
  water: d(0.2, 12),
  salt: d(0.01, 8),
  beta: d(1, 2.2),
  rated: d(0.5, 150),
  leak: d(0, 0.5),
  clogging: d(0, 50),
  p: d(0, 900),
  t: d(0, 45),
  c: d(0, 5000),
  back: d(0, 600),
});
type Case = typeof units extends fc.Arbitrary<infer T> ? T : never;
const solve = (x: Case) => {
  const element = {
    areaM2: x.area,
    waterLPerM2HBar: x.water,
    saltLPerM2H: x.salt,
    polarisation: x.beta,
    leakLPerHBar: x.leak,
  };
  const unit = simpleUnit(element, { ratedLPerH: x.rated, ratedKPa: 414 });
  const cartridges = [{ id: "filter", dropKPa: x.clogging, atLPerH: 80 }];
  const conditions = {
    feedPressureKPaGauge: x.p,
    temperatureC: x.t,
    feedMgPerL: x.c,
    tankPressureKPaGauge: x.back,
  };
  return operatingPoint({ ...unit, cartridges }, conditions);
};
const permeate = (x: Case) => {
  const point = solve(x);
  return point.kind === "flowing" ? point.permeateLPerH : 0;
};

/**
 * Osmotic pressure grows with absolute temperature (0.7 % in 2 °C). Where the salt at the wall takes up nearly all the
 * pressure, warming can honestly give less water, so the law about temperature holds only away from there.
 */
const farFromOsmotic = (x: Case) => {
  const point = solve(x);
  const wallMgPerL = x.beta * (point.kind === "flowing" ? point.concentrateMgPerL : x.c);
  return x.p - x.back > 1.5 * naclOsmoticPressureKPa(wallMgPerL, x.t);
};

describe("laws of the operating point", () => {
  it("any unit gives an answer or a named outcome, balances close, recovery is in [0, 1)", () => {
    fc.assert(
      fc.property(units, (x) => {
        const point = solve(x);
        if (point.kind !== "flowing") {
          expect(["no-flow", "tank-above-feed"]).toContain(point.kind);
          return;
        }
        for (const value of Object.values(point)) if (typeof value === "number") expect(value).not.toBeNaN();
        const water = point.permeateLPerH + point.concentrateLPerH - point.feedLPerH;
        expect(Math.abs(water)).toBeLessThan(1e-9 * point.feedLPerH);
        const feedSalt = point.feedLPerH * x.c;
        const out =
          point.permeateLPerH * point.permeateMgPerL + point.concentrateLPerH * point.concentrateMgPerL;
        expect(Math.abs(out - feedSalt)).toBeLessThanOrEqual(1e-9 * feedSalt + 1e-12);
        expect(point.recovery).toBeGreaterThanOrEqual(0);
        expect(point.recovery).toBeLessThan(1);
      }),
      { numRuns, seed: 20 },
    );
  });
  it("at the membrane: more pressure never gives less, colder and fuller never more", () => {
    fc.assert(
      fc.property(units, (drawn) => {
        const x = { ...drawn, clogging: 0, leak: 0, rated: Math.max(drawn.rated, 10) };
        const base = permeate(x) * (1 - 1e-6) - 1e-6;
        expect(permeate({ ...x, p: x.p + 20 })).toBeGreaterThanOrEqual(base);
        expect(permeate({ ...x, back: Math.max(0, x.back - 20) })).toBeGreaterThanOrEqual(base);
        if (farFromOsmotic(x))
          expect(permeate({ ...x, t: Math.min(45, x.t + 2) })).toBeGreaterThanOrEqual(base);
      }),
      { numRuns, seed: 21 },
    );
  });
});
