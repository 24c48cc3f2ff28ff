import { readFileSync } from "node:fs";
import { storedLitres, tankPressureKPaGauge } from "@tapside/reverse-osmosis";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayAtTank, fullTankState } from "./day-at-tank.ts";
import type { TankTable } from "./tank-table.ts";

const OUTSIDE_KPA = 101.325;

/** Source: `reference/day-at-tank`, an event-finding integration by scipy. */
const [names = [], ...lines] = readFileSync(
  new URL("../../../reference/day-at-tank/data.csv", import.meta.url),
  "utf8",
)
  .trim()
  .split("\n")
  .map((line) => line.split(","));
const cases = lines.map((line) => {
  const of = (name: string) => Number(line[names.indexOf(name)]);
  return { id: line[0]!, of };
});

function tableOf(of: (name: string) => number): TankTable {
  const tank = { volumeL: of("tank_L"), airChargeKPaGauge: of("charge_kPa") };
  const litres = (kPa: number) => storedLitres(tank, kPa, OUTSIDE_KPA);
  const fullL = litres(of("ratio") * of("feed_kPa"));
  const steps = 64;
  const made = (i: number) =>
    of("k_L_h_kPa") * (of("feed_kPa") - tankPressureKPaGauge(tank, (i * fullL) / steps, OUTSIDE_KPA));
  return {
    fullL,
    reopensL: litres((of("ratio") - of("hysteresis")) * of("feed_kPa")),
    floorL: litres(of("minimum_kPa")),
    madeLPerH: Float64Array.from({ length: steps + 1 }, (_, i) => made(i)),
    drainLPerH: new Float64Array(steps + 1).fill(of("drain_L_h")),
  };
}

const steadyHours = (of: (name: string) => number) =>
  Float64Array.from({ length: 288 }, (_, step) => of(`h${Math.floor(step / 12)}`) / 12);

describe("a day against an independent integration", () => {
  it.each(cases)("$id", ({ of }) => {
    const table = tableOf(of);
    const asked = steadyHours(of);
    const day = dayAtTank(table, asked, { start: fullTankState(table) });
    const total = asked.reduce((a, b) => a + b, 0);
    // Filling ends within a step of five minutes: what one step makes or takes is the most that can differ.
    const aStep = Math.max(table.madeLPerH[0]!, ...asked.map((one) => one * 12)) / 12;
    expect(Math.abs(day.drawnL - of("drawn_L"))).toBeLessThan(0.01 * total + 0.2);
    expect(Math.abs(day.shortL - of("short_L"))).toBeLessThan(0.01 * total + 0.2);
    expect(Math.abs(day.madeL - of("made_L"))).toBeLessThan(0.01 * total + 1.5 * aStep);
    expect(Math.abs(day.end.storedL - of("end_L"))).toBeLessThan(0.01 * total + 1.5 * aStep);
    expect(Math.abs(day.hoursRunning - of("hours_running"))).toBeLessThan(0.02 * of("hours_running") + 0.25);
  });
});

const units = fc.record({
  fullL: fc.double({ min: 2, max: 200, noNaN: true }),
  floorShare: fc.double({ min: 0, max: 1, noNaN: true }),
  opensShare: fc.double({ min: 0, max: 0.99, noNaN: true }),
  first: fc.double({ min: 0, max: 80, noNaN: true }),
  lastShare: fc.double({ min: 0, max: 1, noNaN: true }),
});
const days = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 288, maxLength: 288 });

it("water is conserved, nothing is given that was not asked, and a stronger unit leaves less missing", () => {
  fc.assert(
    fc.property(units, days, ({ fullL, floorShare, opensShare, first, lastShare }, day) => {
      const made = Float64Array.from({ length: 9 }, (_, i) => first * (1 + ((lastShare - 1) * i) / 8));
      const table = {
        fullL,
        floorL: floorShare * fullL,
        reopensL: opensShare * fullL,
        madeLPerH: made,
        drainLPerH: made,
      };
      const asked = Float64Array.from(day);
      const start = fullTankState(table);
      const one = dayAtTank(table, asked, { start });
      const total = asked.reduce((a, b) => a + b, 0);
      expect(one.drawnL + one.shortL).toBeCloseTo(total, 6);
      expect(one.madeL - one.drawnL).toBeCloseTo(one.end.storedL - start.storedL, 6);
      expect(one.end.storedL).toBeLessThanOrEqual(fullL + 1e-9);
      expect(one.hoursRunning).toBeLessThanOrEqual(24 + 1e-9);
      const stronger = dayAtTank(table, asked, { start, strength: 3 });
      expect(stronger.shortL).toBeLessThanOrEqual(one.shortL + 3 * first * (24 / 288) + 1e-6);
    }),
    { numRuns: 60 },
  );
});
