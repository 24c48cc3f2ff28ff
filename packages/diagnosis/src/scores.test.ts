import { beforeAll, describe, expect, it } from "vitest";
import { type Engine, loadEngine } from "./engine.ts";
import { scoreOutside } from "./outside-faults.ts";
import { scorePolicies } from "./policy-scores.ts";
import { scoreAllTests, scorePairs } from "./scores.ts";

/**
 * Simulated, not field evidence. Targets: those of the feasibility study. An ordinary run has few cases, so a score only has to be
 * compatible with its target: its 95 % interval must reach it. `npm run soak` asks the full number with a fresh seed.
 */
const soak = process.env.TAPSIDE_DEPTH === "soak";
const seed = soak ? Number(process.env.TAPSIDE_SEED ?? 1) : 4711;
const many = soak ? 3000 : 600;
const few = soak ? 3000 : 30;

let engine: Engine;
beforeAll(async () => {
  engine = await loadEngine();
});

describe.each([
  { altered: false, top1: 0.94, top3: 0.99, error: 0.02, brier: 0.12 },
  { altered: true, top1: 0.91, top3: 0.98, error: 0.03, brier: 0.16 },
])("every test taken, altered: $altered", ({ altered, top1, top3, error, brier }) => {
  const noise = 0.5 / Math.sqrt(many);
  it("the studied causes are named, with odds that mean what they say", () => {
    const score = scoreAllTests(engine, { cases: many, seed, altered }, "studied");
    expect(score.top1.high).toBeGreaterThanOrEqual(top1);
    expect(score.top3.high).toBeGreaterThanOrEqual(top3);
    expect(score.calibrationError).toBeLessThanOrEqual(error + noise);
    expect(score.brier).toBeLessThanOrEqual(brier + noise);
    for (const share of Object.values(score.recall)) expect(share.high).toBeGreaterThanOrEqual(0.65);
  }, 600_000);
});

it("the whole catalogue is named in nine of ten", () => {
  const score = scoreAllTests(engine, { cases: many, seed, altered: false }, "whole");
  expect(score.top1.high).toBeGreaterThanOrEqual(0.9);
}, 600_000);

it("two causes: one is in the first three, both are named", () => {
  const score = scorePairs(engine, { cases: many, seed, altered: false });
  expect(score.oneInFirstThree.high).toBeGreaterThanOrEqual(0.98);
  expect(score.bothNamed.low).toBeGreaterThanOrEqual(0.7);
}, 600_000);

it("choosing tests takes at most half the checklist's minutes at the same accuracy", () => {
  const { adaptive, checklist, pairedMinutesShare } = scorePolicies(engine, {
    cases: few,
    seed,
    altered: false,
  });
  expect(adaptive.top1.high).toBeGreaterThanOrEqual(0.93);
  expect(adaptive.top1.high).toBeGreaterThanOrEqual(checklist.top1.value - 0.02);
  expect(adaptive.tests.median).toBeLessThanOrEqual(soak ? 8 : 10);
  expect(adaptive.minutes.median).toBeLessThanOrEqual(soak ? 15 : 22);
  expect(pairedMinutesShare).toBeLessThanOrEqual(soak ? 0.5 : 0.6);
}, 3_600_000);

it("faults outside the catalogue are called unexplained, known ones rarely", () => {
  const { unexplained, falseAlarms } = scoreOutside(engine, { cases: soak ? 100 : 8, seed, altered: false });
  for (const share of Object.values(unexplained)) expect(share.high).toBeGreaterThanOrEqual(0.8);
  expect(falseAlarms.low).toBeLessThanOrEqual(0.02);
}, 3_600_000);
