import { beforeAll, expect, it } from "vitest";
import { type Engine, loadEngine } from "./engine.ts";
import { plannerOn, practiceUnit, repairInPractice, takeTest } from "./practice.ts";

let engine: Engine;
beforeAll(async () => {
  engine = await loadEngine();
});

it("the same seed gives the same unit and the same numbers", () => {
  const [one, other] = [0, 1].map(() =>
    takeTest(takeTest(practiceUnit(5, "usual"), "feedTds"), "permeateFlow"),
  );
  expect(one!.readings).toEqual(other!.readings);
});

it("every reading costs its minutes, a shared set-up only once, and repeats scatter", () => {
  const first = takeTest(practiceUnit(5, "usual"), "permeateTds");
  const second = takeTest(first, "permeateFlow");
  expect(first.minutes).toBeGreaterThan(second.minutes - first.minutes);
  const again = takeTest(second, "permeateFlow");
  expect(again.readings.permeateFlow).not.toBe(second.readings.permeateFlow);
});

it("the right repair removes the fault, a wrong one only costs time", () => {
  const unit = practiceUnit(8, "easy");
  const right = repairInPractice(unit, unit.causes[0]!);
  expect(right.causes).toEqual([]);
  expect(right.log[0]).toMatchObject({ kind: "repair", helped: true });
  const wrong = repairInPractice(unit, unit.causes[0] === "sealLeak" ? "brineSeal" : "sealLeak");
  expect(wrong.causes).toEqual(unit.causes);
});

it("the planner finds what is hidden in most units, also two", () => {
  const units = [1, 2, 3, 4, 5, 6].map((seed) => practiceUnit(seed, seed > 4 ? "hard" : "easy"));
  const solved = units.filter((unit) => plannerOn(unit, engine).causes.length === 0);
  expect(solved.length).toBeGreaterThanOrEqual(4);
}, 120_000);
