import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { filling } from "./filling.ts";
import { readTable } from "./internal/read-table.test-helper.ts";
import { type FlowingPoint, operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";
import { tankFullKPaGauge } from "./tank-full.ts";
import type { PermeatePump, Unit } from "./unit.ts";
import { usualPermeatePump } from "./usual-permeate-pump.ts";

const element = { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 };
const plain = simpleUnit(element, { ratedLPerH: 60, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 50 });
const pumped = (pump: Partial<PermeatePump> = {}): Unit => ({
  ...plain,
  permeatePump: { ...usualPermeatePump, ...pump },
});
const day = { feedPressureKPaGauge: 420, temperatureC: 15, feedMgPerL: 300 };
const at = (unit: Unit, tankPressureKPaGauge: number): FlowingPoint => {
  const point = operatingPoint(unit, { ...day, tankPressureKPaGauge });
  if (point.kind !== "flowing") throw new Error(point.kind);
  return point;
};

describe("a permeate pump, by hand", () => {
  const point = at(pumped(), 260);
  // Force on the rod: 2 × drive = 260 + 20. Volume: a litre lifted takes 2/(1 − 0.05) litres of concentrate.
  const driveKPa = (260 + 20) / 2;
  const drivingLPerH = (2 / 0.95) * point.permeateLPerH;
  it("takes of the concentrate what forces and volumes of its two pistons ask", () => {
    expect(point.permeatePump).toMatchObject({ state: "lifting", liftKPa: 260, driveKPa });
    expect(point.permeatePump!.liftedLPerH).toBeCloseTo(point.permeateLPerH, 9);
    expect(point.permeatePump!.drivingLPerH).toBeCloseTo(drivingLPerH, 9);
  });
  it("has the drain run slower while it pushes, for as long as its water takes", () => {
    const free = 60 * Math.sqrt(point.concentratePressureKPaGauge / 414);
    const pushing = 60 * Math.sqrt((point.concentratePressureKPaGauge - driveKPa) / 414);
    const share = drivingLPerH / pushing;
    expect(point.concentrateLPerH).toBeCloseTo(share * pushing + (1 - share) * free, 6);
  });
  it("makes what the unit without it makes against its inlet's pressure, but for the slower drain", () => {
    expect(point.permeatePressureKPaGauge).toBe(20);
    expect(point.permeateLPerH).toBeGreaterThan(0.99 * at(plain, 20).permeateLPerH);
    expect(point.permeateLPerH).toBeLessThan(at(plain, 20).permeateLPerH);
  });
  it("too little drain for its strokes: recovery is one part in 1 + ratio/(1 − slip)", () => {
    const overrun = at(pumped({ strokeRatio: 3.2, slip: 0.1 }), 200);
    expect(overrun.permeatePump!.state).toBe("overrun");
    expect(overrun.recovery).toBeCloseTo(1 / (1 + 3.2 / 0.9), 8);
  });
  it("lifts to ratio × feed less its loss and no further; the feed alone does not reach its own pressure", () => {
    const most = 2 * day.feedPressureKPaGauge - 20;
    const kindAt = (unit: Unit, kPa: number) =>
      operatingPoint(unit, { ...day, tankPressureKPaGauge: kPa }).kind;
    expect(kindAt(plain, 1.001 * day.feedPressureKPaGauge)).toBe("tank-above-feed");
    expect(kindAt(pumped(), 0.97 * most)).toBe("flowing");
    expect(kindAt(pumped(), 1.001 * most)).toBe("tank-above-feed");
  });
});

describe("a permeate pump that stands still", () => {
  const without = (point: FlowingPoint) => {
    const { permeatePump: _, ...rest } = point;
    return rest;
  };
  const same = (unit: Unit, bare: Unit, kPa: number) =>
    expect(without(at(unit, kPa))).toEqual(without(at(bare, kPa)));
  it("stuck, with exchanged lines, or with a tank below its inlet pressure, the unit is the one without it", () => {
    same(pumped({ stuck: true }), plain, 200);
    same(pumped(), plain, 15);
    same({ ...pumped(), linesReversed: true }, { ...plain, linesReversed: true }, 30);
    expect(at(pumped({ stuck: true }), 200).permeatePump!.state).toBe("stalled");
  });
  it("cannot lift to the tank: the tank presses on the element as without it", () => {
    const weak = pumped({ strokeRatio: 0.5 });
    same(weak, plain, 300);
    expect(at(weak, 300).permeatePump!.state).toBe("stalled");
  });
});

const d = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const cases = fc.record({
  pump: fc.record({ strokeRatio: d(0.5, 8), lossKPa: d(0, 80), slip: d(0, 0.5), inletKPa: d(0, 60) }),
  restrictorLPerH: d(5, 150),
  areaM2: d(0.2, 3),
  feedKPa: d(100, 800),
  temperatureC: d(2, 40),
  feedMgPerL: d(20, 3000),
  /** Of the feed. */
  tankShare: d(0.05, 1.5),
});
type Case = typeof cases extends fc.Arbitrary<infer T> ? T : never;
const unitOf = (c: Case, pump?: PermeatePump): Unit => ({
  ...simpleUnit({ ...element, areaM2: c.areaM2 }, { ratedLPerH: c.restrictorLPerH, ratedKPa: 414 }),
  ...(pump && { permeatePump: pump }),
});
const conditionsOf = (c: Case) => ({
  feedPressureKPaGauge: c.feedKPa,
  temperatureC: c.temperatureC,
  feedMgPerL: c.feedMgPerL,
  tankPressureKPaGauge: c.tankShare * c.feedKPa,
});

describe("laws of a permeate pump", () => {
  const runs: Readonly<Record<string, number>> = { ci: 2000, soak: 20_000 };
  const numRuns = runs[process.env.TAPSIDE_DEPTH ?? ""] ?? 300;
  const overFlowing = (law: (c: Case, point: FlowingPoint) => void) => {
    let flowing = 0;
    fc.assert(
      fc.property(cases, (c) => {
        const point = operatingPoint(unitOf(c, c.pump), conditionsOf(c));
        if (point.kind !== "flowing") return;
        flowing++;
        law(c, point);
      }),
      { numRuns },
    );
    expect(flowing).toBeGreaterThan(numRuns / 4);
  };
  it("gives out no more work than it takes", () => {
    overFlowing((_, { permeatePump: p }) => {
      expect(p!.liftedLPerH * p!.liftKPa).toBeLessThanOrEqual(p!.drivingLPerH * p!.driveKPa * (1 + 1e-12));
    });
  });
  it("drives with no more water than runs to the drain, at no more pressure than the concentrate has", () => {
    overFlowing((_, point) => {
      const { driveKPa, drivingLPerH, liftedLPerH } = point.permeatePump!;
      expect(drivingLPerH).toBeLessThanOrEqual(point.concentrateLPerH * (1 + 1e-8));
      expect(liftedLPerH).toBeLessThanOrEqual(point.permeateLPerH);
      expect(driveKPa).toBeLessThanOrEqual(point.concentratePressureKPaGauge);
    });
  });
  it("never lifts above its ratio, and without it never above the feed", () => {
    overFlowing((c, point) => {
      const tank = c.tankShare * c.feedKPa;
      const most = Math.max(
        c.feedKPa,
        c.pump.strokeRatio * point.concentratePressureKPaGauge - c.pump.lossKPa,
      );
      expect(tank).toBeLessThanOrEqual(most);
    });
  });
  it("the element feels no more than the tank, and no less than the inlet or the tank below it", () => {
    overFlowing((c, { permeatePressureKPaGauge: felt }) => {
      const tank = c.tankShare * c.feedKPa;
      expect(felt).toBeLessThanOrEqual(tank + 1e-6);
      expect(felt).toBeGreaterThanOrEqual(Math.min(tank, c.pump.inletKPa) - 1e-6);
    });
  });
  it("lifts: more permeate and less drain for each litre than the same unit without it", () => {
    let lifting = 0;
    overFlowing((c, point) => {
      if (point.permeatePump!.state !== "lifting") return;
      lifting++;
      const bare = operatingPoint(unitOf(c), conditionsOf(c));
      if (bare.kind !== "flowing") return;
      // A slower drain gathers more salt: what that costs must not eat what the pump gives.
      if (c.tankShare * c.feedKPa < 1.5 * c.pump.inletKPa + 0.2 * c.feedKPa) return;
      expect(point.permeateLPerH).toBeGreaterThan(bare.permeateLPerH);
      expect(point.concentrateLPerH / point.permeateLPerH).toBeLessThan(
        bare.concentrateLPerH / bare.permeateLPerH,
      );
    });
    expect(lifting).toBeGreaterThan(numRuns / 8);
  });
});

describe("filling with a permeate pump", () => {
  const filled = (unit: Unit, ratio: number) => filling({ ...unit, shutOff: { ratio } }, day);
  it("is faster and takes less drain for each litre; it can fill to the feed's own pressure", () => {
    const [bare, lifted] = [filled(plain, 0.64), filled(pumped(), 0.64)];
    if (bare.kind !== "known" || lifted.kind !== "known") throw new Error("not filled");
    expect(lifted.value.storedL).toBeCloseTo(bare.value.storedL, 9);
    expect(lifted.value.hours).toBeLessThan(bare.value.hours);
    expect(lifted.value.drainL).toBeLessThan(bare.value.drainL);
    expect(filled(plain, 1).kind).toBe("refused");
    expect(filled(pumped(), 1).kind).toBe("known");
  });
  it("that is never shut off stands above the feed", () => {
    const open = (unit: Unit) =>
      tankFullKPaGauge({ ...unit, shutOff: { ratio: 0.64, stuckOpen: true } }, day);
    const [bare, lifted] = [open(plain), open(pumped())];
    if (bare.kind !== "known" || lifted.kind !== "known") throw new Error("no pressure");
    expect(bare.value).toBeLessThan(day.feedPressureKPaGauge);
    expect(lifted.value).toBeGreaterThan(day.feedPressureKPaGauge);
    expect(lifted.value).toBeLessThan(2 * day.feedPressureKPaGauge);
  });
});

// Where the permeate stands and what the pump takes: reference/permeate-pump-units, scipy, to the 0.5 % of its SOURCE.md; flows and
// concentrations of the same rows are held by the command line's table test.
it("permeate side, drive and state agree with an independent solution", () => {
  const rows = readTable(readFileSync("reference/permeate-pump-units/operating_points.csv", "utf8"));
  const states = new Set<string>();
  for (const row of rows) {
    const n = (name: string) => Number(row[name]);
    const one = {
      areaM2: n("area_m2"),
      waterLPerM2HBar: n("A_L_m2_h_bar"),
      saltLPerM2H: n("B_L_m2_h"),
      polarisation: n("beta"),
      temperatureForm: "1.03^(T-25)" as const,
    };
    const unit: Unit = {
      ...simpleUnit(one, { ratedLPerH: n("restrictor_L_h"), ratedKPa: n("restrictor_rated_kPa") }),
      elements: Array.from({ length: n("elements") }, () => one),
      arrangement: row.arrangement as "series" | "parallel",
      cartridges: [{ id: "filters", dropKPa: n("filter_drop_kPa"), atLPerH: n("filter_drop_at_L_h") }],
      ...(n("booster_kPa") > 0 && {
        booster: {
          shutOffRiseKPa: n("booster_kPa"),
          openFlowLPerH: n("booster_open_L_h"),
          offBelowKPaGauge: n("booster_off_below_kPa_gauge"),
        },
      }),
      permeatePump: {
        strokeRatio: n("pump_stroke_ratio"),
        lossKPa: n("pump_loss_kPa"),
        slip: n("pump_slip"),
        inletKPa: n("pump_inlet_kPa"),
      },
    };
    const point = operatingPoint(unit, {
      feedPressureKPaGauge: n("feed_pressure_kPa_gauge"),
      temperatureC: n("temperature_C"),
      feedMgPerL: n("feed_NaCl_mg_L"),
      tankPressureKPaGauge: n("tank_pressure_kPa_gauge"),
    });
    if (point.kind !== "flowing") throw new Error(`${row.id} ${point.kind}`);
    states.add(point.permeatePump!.state);
    expect(point.permeatePump!.state, row.id).toBe(row.pump_state);
    expect(point.permeatePump!.driveKPa / Math.max(1e-9, n("drive_kPa")), row.id).toBeCloseTo(
      n("drive_kPa") > 0 ? 1 : 0,
      6,
    );
    expect(Math.abs(point.permeatePressureKPaGauge / n("permeate_side_kPa_gauge") - 1), row.id).toBeLessThan(
      0.005,
    );
  }
  expect(states.size).toBeGreaterThan(2);
});
