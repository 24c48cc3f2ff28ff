import { filling, operatingPoint } from "@tapside/reverse-osmosis";
import { describe, expect, it } from "vitest";
import { unitFitVerb } from "./unit-fit.ts";
import { unitOfRow } from "./unit-row.ts";

// Simulated, no source but chance itself: readings drawn about a known truth, and how often the printed interval holds it.
const draws = { soak: 4000, ci: 800 }[process.env.TAPSIDE_DEPTH ?? ""] ?? 300;
/** Four standard deviations of counting: one good interval in some 16 000 is called bad. */
const band = (n: number) => 4 * Math.sqrt((0.95 * 0.05) / n);

/** Seeded normal deviates: a 32-bit mixing generator (public-domain constants) and Box–Muller. */
function normals(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** A school kitchen's unit, a small cold one at low pressure, a large warm one on salty water. */
const units = {
  usual: { pressure: 390, t: 13, feed: 280, area: 1.5, a: 4.2, b: 0.65, drain: 60, tank: 53, charge: 50 },
  coldAndWeak: { pressure: 240, t: 6, feed: 150, area: 0.7, a: 3.1, b: 0.4, drain: 35, tank: 15, charge: 40 },
  saltyAndWarm: {
    pressure: 480,
    t: 27,
    feed: 1600,
    area: 2.4,
    a: 3.6,
    b: 0.9,
    drain: 80,
    tank: 80,
    charge: 90,
  },
};
type Truth = (typeof units)["usual"];
const dropKPa = 18;
const outsideKPa = 101.325;

function readingsOf(truth: Truth) {
  const row = {
    area_m2: String(truth.area),
    A_L_m2_h_bar: String(truth.a),
    B_L_m2_h: String(truth.b),
    beta: "1.1",
    restrictor_L_h: String(truth.drain),
    tank_L: String(truth.tank),
    air_charge_kPa_gauge: String(truth.charge),
  };
  const unit = unitOfRow.read(row);
  if (unit.kind !== "known") throw new Error(JSON.stringify(unit));
  const at = { feedPressureKPaGauge: truth.pressure, temperatureC: truth.t, feedMgPerL: truth.feed };
  const open = operatingPoint(unit.value, { ...at, tankPressureKPaGauge: 0 });
  const filled = filling(unit.value, at);
  if (open.kind !== "flowing" || filled.kind !== "known") throw new Error(filled.kind);
  const full = filled.value.shutOffKPaGauge;
  const gas = (truth.tank * (truth.charge + outsideKPa)) / (full + outsideKPa);
  const drawnL = 0.5 * filled.value.storedL;
  return {
    row,
    exact: {
      feed_pressure_kPa_gauge: [truth.pressure, 5],
      before_filter_kPa_gauge: [truth.pressure + dropKPa, 5],
      temperature_C: [truth.t, 0.3],
      feed_NaCl_mg_L: [truth.feed, 0.01 * truth.feed],
      permeate_L_h: [open.permeateLPerH, 0.02 * open.permeateLPerH],
      permeate_mg_L: [open.permeateMgPerL, 0.01 * open.permeateMgPerL + 0.3],
      concentrate_L_h: [open.concentrateLPerH, 0.02 * open.concentrateLPerH],
      tank_full_kPa_gauge: [full, 3],
      tank_after_kPa_gauge: [((full + outsideKPa) * gas) / (gas + drawnL) - outsideKPa, 3],
      drawn_L: [drawnL, 0.01 * drawnL],
      fill_time_h: [filled.value.hours, 0.02 * filled.value.hours],
    } as const satisfies Record<string, readonly [number, number]>,
  };
}

describe.each(Object.entries(units))("19 in 20 of the intervals of a fit hold the truth: %s", (_, truth) => {
  const { row, exact } = readingsOf(truth);
  const normal = normals(4711);
  const { A_L_m2_h_bar: _a, B_L_m2_h: _b, restrictor_L_h: _r, ...told } = row;
  const timed = draws / 4;
  const fits = Array.from({ length: draws }, (_, i) => {
    const { fill_time_h, ...untimed } = exact;
    const read = Object.entries(i < timed ? { fill_time_h, ...untimed } : untimed).flatMap(
      ([name, [value, u]]) => [
        [name, String(value + normal() * u)],
        [`${name}_u`, String(u)],
      ],
    );
    const outcome = unitFitVerb.row({ ...told, ...Object.fromEntries(read) });
    if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
    return outcome.value;
  });
  it.each([
    ["A_L_m2_h_bar", truth.a, draws],
    ["B_L_m2_h", truth.b, draws],
    ["restrictor_L_h", truth.drain, draws],
    ["filter_drop_found_kPa", dropKPa, draws],
    ["air_charge_found_kPa_gauge", truth.charge, draws],
    ["A_by_filling_ratio", 1, timed],
  ] as const)("%s", (name, is, n) => {
    const low = (fit: (typeof fits)[number]) => Number(fit[`${name}_low`]);
    const high = (fit: (typeof fits)[number]) => Number(fit[`${name}_high`]);
    const held = fits.slice(0, n).filter((fit) => low(fit) <= is && is <= high(fit)).length / n;
    expect(Math.abs(held - 0.95)).toBeLessThan(band(n));
  });
});
