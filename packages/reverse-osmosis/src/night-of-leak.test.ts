import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LeakQuestion, nightOfLeak } from "./night-of-leak.ts";
import { nightRunning } from "./night-running.ts";
import { simpleUnit } from "./simple-unit.ts";
import type { Unit } from "./unit.ts";

// The worked visit of night-running.test.ts: 53 L at 9 psi, feed 4.00 bar, 21 °C, 265 mg/L; the gauge swings 37 and 34 psi.
const psi = 6.894757;
const element = { areaM2: 1.1, waterLPerM2HBar: 4.3, saltLPerM2H: 0.66, polarisation: 1.1 };
const unit: Unit = {
  ...simpleUnit(element, { ratedLPerH: 35, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 9 * psi }),
  cartridges: [{ id: "filters", dropKPa: 10, atLPerH: 80 }],
  shutOff: { ratio: (37 * psi) / 400, hysteresis: (3 * psi) / 400 },
};
const { hysteresis: _, ...plain } = unit.shutOff;
const unsaid: Unit = { ...unit, shutOff: plain };
const kitchen = { feedPressureKPaGauge: 400, temperatureC: 21, feedMgPerL: 265 };
const night = (of: Unit, question: LeakQuestion) => {
  const outcome = nightOfLeak(of, kitchen, question);
  if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
  return outcome.value;
};

describe("the check valve of the worked visit: 158 mL/min back from the full tank", () => {
  // 17 min of filling and 10 of leaking: 22 cycles of 27 min in ten hours; 417 mL/min by the water meter, 250 L.
  const tenHours = night(unit, { leak: { at: "checkValve", lPerH: 157 * 0.06 }, hours: 10 });
  it("starts about 22 times in ten hours and sends about 250 L to the drain", () => {
    expect(tenHours.how).toBe("cycling");
    expect(Math.abs(tenHours.starts.value - 22)).toBeLessThanOrEqual(1);
    expect(Math.abs(tenHours.drainL / 250 - 1)).toBeLessThan(0.04);
    expect(tenHours.tapL).toBe(0);
  });
  it("the tank holds about 28 in the morning where 13 ran to waste", () => {
    expect(Math.abs(tenHours.firstMgPerL - 28)).toBeLessThan(4);
    expect(tenHours.firstMgPerL).toBeGreaterThan(tenHours.soundMgPerL);
  });
  it("more than the membrane lets back is no leak of the check valve", () => {
    expect(nightOfLeak(unit, kitchen, { leak: { at: "checkValve", lPerH: 60 }, hours: 10 })).toMatchObject({
      code: "leak-above-membrane",
    });
  });
});

describe("a dripping tap", () => {
  // Boyle by hand: the gas of 53 L at 9 psi between 37 and 34 psi gauge, atmosphere 14.696.
  const gasL = (gauge: number) => (53 * (9 + 14.696)) / (gauge + 14.696);
  const swingL = gasL(34) - gasL(37);
  it("of 3 mL/min takes the swing's litres first: no start in as many hours, one just after", () => {
    const hours = swingL / 0.18;
    const leak = { at: "tap", lPerH: 0.18 } as const;
    expect(night(unit, { leak, hours: 0.999 * hours }).starts.value).toBe(0);
    expect(night(unit, { leak, hours: 1.001 * hours }).starts.value).toBe(1);
    const before = night(unit, { leak, hours: 0.999 * hours });
    expect([before.drainL, before.firstMgPerL]).toEqual([0, before.soundMgPerL]);
  });
  it("what drips and what drains is what is bought, and the tank ends between open and full", () => {
    const leak = { at: "tap", lPerH: 3 } as const;
    const ten = night(unit, { leak, hours: 10 });
    expect(ten.tapL).toBe(30);
    const running = nightRunning(unit, kitchen, { tapLeakLPerH: 3 });
    if (running.kind !== "known" || !running.value.cycle) throw new Error("no cycle");
    expect(running.value.feedLPerDay - running.value.drainLPerDay).toBeCloseTo(72, 9);
    // A cycle makes its swing and what drips meanwhile.
    const { fillingHours, leakingHours } = running.value.cycle;
    expect(leakingHours).toBeCloseTo(swingL / 3, 4);
    expect(fillingHours).toBeGreaterThan(0);
    const stored = ten.course.map((one) => one.storedL);
    expect(Math.max(...stored) - Math.min(...stored)).toBeCloseTo(swingL, 4);
  });
  it("that takes more than is made near the full tank never lets the unit stop", () => {
    const ten = night(unit, { leak: { at: "tap", lPerH: 9.5 }, hours: 10 });
    expect(ten.how).toBe("never-closes");
    expect(ten.starts).toEqual({ low: 0, value: 0, high: 0 });
    expect(ten.drainL).toBeGreaterThan(250);
  });
  it("brings the salt that crept in since the last start: the first water is saltier than by the filling alone", () => {
    const ten = night(unit, { leak: { at: "tap", lPerH: 3 }, hours: 10 });
    const running = nightRunning(unit, kitchen, { tapLeakLPerH: 3 });
    if (running.kind !== "known" || !running.value.cycle) throw new Error("no cycle");
    expect(ten.firstMgPerL).toBeGreaterThan(ten.soundMgPerL);
    const { swingL: swing, madeMgPerL } = running.value.cycle;
    const full = Math.max(...ten.course.map((one) => one.storedL));
    const withoutCreep = madeMgPerL + (ten.soundMgPerL - madeMgPerL) * (1 - swing / full) ** ten.starts.value;
    expect(ten.firstMgPerL).toBeGreaterThan(withoutCreep);
  });
});

it("a shut-off that does not say when it opens again tells its starts from to", () => {
  const { starts } = night(unsaid, { leak: { at: "tap", lPerH: 3 }, hours: 10 });
  expect(starts.low).toBeLessThan(starts.value);
  expect(starts.high).toBeGreaterThan(starts.value);
});

it("laws: a wider leak never drains less but for the phase the night ends in; through the check valve it never starts less often", () => {
  const d = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom("tap", "checkValve"),
      d(0.03, 3),
      d(1.05, 2),
      d(250, 600),
      d(3, 35),
      (at, lPerH, more, feed, temperatureC) => {
        const conditions = { ...kitchen, feedPressureKPaGauge: feed, temperatureC };
        const of = (l: number) => nightOfLeak(unit, conditions, { leak: { at, lPerH: l }, hours: 10 });
        const [less, wider] = [of(lPerH), of(lPerH * more)];
        if (less.kind !== "known" || wider.kind !== "known") return;
        for (const one of [less.value, wider.value]) {
          const { course, drainL, firstMgPerL } = one;
          expect([drainL, firstMgPerL, one.starts.value].every(Number.isFinite)).toBe(true);
          expect(course.at(-1)!.hours).toBeCloseTo(10, 9);
          expect(course.every((step, i) => i === 0 || step.drainL >= course[i - 1]!.drainL)).toBe(true);
        }
        // The night may end within a filling of the one and not of the other.
        const slack = Math.max(...steps(less.value.course));
        expect(wider.value.drainL).toBeGreaterThanOrEqual(less.value.drainL - slack);
        // A wide tap leak draws its fillings out; through the check valve nothing is drawn while it fills.
        if (at === "checkValve" && wider.value.how === "cycling")
          expect(wider.value.starts.value).toBeGreaterThanOrEqual(less.value.starts.value);
      },
    ),
    { numRuns: 150 },
  );
  expect(night(unit, { leak: { at: "tap", lPerH: 0 }, hours: 10 })).toMatchObject({
    how: "silent",
    drainL: 0,
  });
});

const steps = (course: readonly { readonly drainL: number }[]) =>
  course.map((one, i) => one.drainL - (course[i - 1]?.drainL ?? 0));
