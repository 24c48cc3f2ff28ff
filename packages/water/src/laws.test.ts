import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CHARGE, CONSTITUENTS, type ConservedWater, type WaterAnalysis } from "./analysis.ts";
import { boilDown } from "./boil.ts";
import { heatClosed } from "./heat.ts";
import { mix } from "./mix.ts";
import { precipitationPotential } from "./precipitation.ts";
import { speciate } from "./speciate.ts";
import { splitStream } from "./split.ts";

/** Laws of conservation and of saturation; no source but physics. */
const DEPTH = process.env.TAPSIDE_DEPTH;
const RUNS = DEPTH === "soak" ? 100_000 : DEPTH === "ci" ? 20_000 : 3000;
const FEW = { numRuns: 200, seed: 20 };

const amount = (most: number) =>
  fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 6, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }).map((u) => most * u ** 3) },
  );
const anyWater: fc.Arbitrary<WaterAnalysis> = fc.record({
  temperatureC: fc.double({ min: 0, max: 160, noNaN: true }),
  pH: fc.double({ min: 0, max: 14, noNaN: true }),
  alkalinityMgPerLCaCO3: fc.oneof(amount(3000), fc.double({ min: -500, max: 500, noNaN: true })),
  ions: fc.record({
    Ca: amount(1500),
    Mg: amount(1000),
    Na: amount(5000),
    K: amount(500),
    Cl: amount(5000),
    SO4: amount(4000),
    NO3: amount(500),
    F: amount(50),
    SiO2: amount(500),
  }),
});
const ordinary: fc.Arbitrary<WaterAnalysis> = fc.record({
  temperatureC: fc.double({ min: 5, max: 30, noNaN: true }),
  pH: fc.double({ min: 6, max: 8.5, noNaN: true }),
  alkalinityMgPerLCaCO3: fc.double({ min: 10, max: 400, noNaN: true }),
  ions: fc.record({
    Ca: fc.double({ min: 2, max: 200, noNaN: true }),
    Mg: amount(60),
    Na: amount(300),
    K: amount(20),
    Cl: amount(300),
    SO4: amount(300),
    NO3: amount(50),
    F: amount(2),
    SiO2: amount(60),
  }),
});

const solved = (analysis: WaterAnalysis) => {
  const outcome = speciate(analysis);
  if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
const near = (actual: number, expected: number, scale: number) =>
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-9 * Math.max(scale, 1e-6));
const charge = (water: ConservedWater) =>
  CONSTITUENTS.reduce((sum, id) => sum + CHARGE[id] * water.totals[id], -water.alkalinityEqPerKg);
const finite = (value: object): boolean =>
  Object.values(value).every((x) =>
    typeof x === "number" ? !Number.isNaN(x) : typeof x === "object" ? finite(x) : true,
  );

describe("random waters", () => {
  it(`each is an answer or a named refusal, and so is its precipitation (${RUNS})`, () => {
    const codes = new Map<string, number>();
    fc.assert(
      fc.property(anyWater, (analysis) => {
        const outcome = speciate(analysis);
        if (outcome.kind === "refused") {
          codes.set(outcome.code, (codes.get(outcome.code) ?? 0) + 1);
          expect(outcome.code).toMatch(/^[a-z0-9-]+$/);
          return outcome.code !== "not-converged";
        }
        if (outcome.kind !== "known" || !finite(outcome.value)) return false;
        const potential = precipitationPotential(outcome.value);
        return potential.kind === "refused"
          ? potential.code !== "not-converged"
          : potential.kind === "known" && finite(potential.value);
      }),
      { numRuns: RUNS, seed: 3 },
    );
  }, 600_000);
});

describe("conservation", () => {
  it("mixing keeps mass and charge, and is associative", () => {
    fc.assert(
      fc.property(ordinary, ordinary, ordinary, (x, y, z) => {
        const [a, b, c] = [solved(x), solved(y), solved(z)];
        const part = (water: ConservedWater, litres: number) => ({ water, litres });
        const value = (parts: Parameters<typeof mix>[0]) => {
          const outcome = mix(parts);
          if (outcome.kind !== "known") throw new Error(outcome.kind);
          return outcome.value;
        };
        const left = value([part(value([part(a, 1), part(b, 2)]), 3), part(c, 4)]);
        const right = value([part(a, 1), part(value([part(b, 2), part(c, 4)]), 6)]);
        for (const id of CONSTITUENTS) {
          near(left.totals[id], right.totals[id], left.totals[id]);
          near(7 * left.totals[id], a.totals[id] + 2 * b.totals[id] + 4 * c.totals[id], left.totals[id]);
        }
        near(left.carbonMolPerKg, right.carbonMolPerKg, left.carbonMolPerKg);
        near(7 * charge(left), charge(a) + 2 * charge(b) + 4 * charge(c), 0.1);
      }),
      FEW,
    );
  });
  it("splitting keeps mass and charge, and leaves the permeate neutral", () => {
    const rejections = {
      Ca: 0.98,
      Mg: 0.98,
      K: 0.94,
      Cl: 0.95,
      SO4: 0.99,
      NO3: 0.9,
      F: 0.94,
      SiO2: 0.94,
      alkalinity: 0.94,
    };
    fc.assert(
      fc.property(ordinary, fc.double({ min: 0.05, max: 0.9, noNaN: true }), (analysis, recovery) => {
        const feed = solved(analysis);
        const outcome = splitStream(feed, rejections, recovery);
        if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
        const { permeate, concentrate } = outcome.value;
        const whole = (of: (w: ConservedWater) => number) =>
          near(recovery * of(permeate) + (1 - recovery) * of(concentrate), of(feed), 0.1);
        for (const id of CONSTITUENTS) whole((w) => w.totals[id]);
        whole((w) => w.alkalinityEqPerKg);
        whole((w) => w.carbonMolPerKg);
        whole(charge);
        near(charge(permeate), 0, 0.1);
      }),
      FEW,
    );
  });
  it("boiling down keeps calcium, sulfate, alkalinity and charge between water and scale", () => {
    fc.assert(
      fc.property(
        ordinary,
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.boolean(),
        (analysis, factor, open) => {
          const feed = solved(analysis);
          const gas = open ? { co2Atm: 4e-4 } : {};
          const outcome = boilDown(feed, { temperatureC: 100, concentrationFactor: factor, ...gas });
          if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
          const { water, calciteMgPerKgFeed, anhydriteMgPerKgFeed } = outcome.value;
          const calcite = calciteMgPerKgFeed / 100091.1;
          const anhydrite = anhydriteMgPerKgFeed / 136144;
          near(water.totals.Ca / factor + calcite + anhydrite, feed.totals.Ca, 0.01);
          near(water.totals.SO4 / factor + anhydrite, feed.totals.SO4, 0.01);
          near(water.alkalinityEqPerKg / factor + 2 * calcite, feed.alkalinityEqPerKg, 0.01);
          if (!open) near(water.carbonMolPerKg / factor + calcite, feed.carbonMolPerKg, 0.01);
          near(charge(water) / factor, charge(feed), 0.1);
          expect(calcite).toBeGreaterThanOrEqual(0);
          expect(anhydrite).toBeGreaterThanOrEqual(0);
          expect(water.saturation.calcite).toBeLessThan(1e-6);
          expect(water.saturation.anhydrite).toBeLessThan(1e-6);
        },
      ),
      FEW,
    );
  });
});

describe("saturation", () => {
  /** Above pH 8 dissociating water gives off H+ when heated and a lime-softened water's index falls: left out. */
  it("SI is 0 after the water's own precipitation, and heating that water oversaturates it", () => {
    fc.assert(
      fc.property(ordinary, (analysis) => {
        const outcome = precipitationPotential(solved(analysis));
        if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
        const { after } = outcome.value;
        expect(Math.abs(after.saturation.calcite)).toBeLessThan(1e-6);
        const hot = heatClosed(after, 60);
        if (hot.kind !== "known") throw new Error(JSON.stringify(hot));
        if (after.pH < 7.8) expect(hot.value.saturation.calcite).toBeGreaterThan(0);
      }),
      FEW,
    );
  });
});
