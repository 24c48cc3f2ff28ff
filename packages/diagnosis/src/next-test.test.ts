import { beforeAll, describe, expect, it } from "vitest";
import { advise } from "./advise.ts";
import { donorBank } from "./donors.ts";
import { allReadings } from "./drawn-case.ts";
import { type Engine, loadEngine } from "./engine.ts";
import { meaningsOf, minutesOf, nextTests } from "./next-test.ts";
import { seededRandom } from "./random.ts";
import { simulateCase } from "./simulate-case.ts";
import { SET_UPS, TESTS, type Test } from "./test-catalogue.ts";

let engine: Engine;
beforeAll(async () => {
  engine = await loadEngine();
});

const weakTap = () => {
  const one = simulateCase(["airChargeLow"], seededRandom(3));
  return { bank: donorBank({ ...one.scene, complaint: "weakAtTap" }), all: allReadings(one) };
};

describe("which test can be done", () => {
  it("a port that is not there, a tool that stayed at home and a test that was done are never proposed", () => {
    const one = simulateCase(["healthy"], seededRandom(3));
    const bank = donorBank({ ...one.scene, impossible: ["airCharge"] });
    const proposed = nextTests(
      engine,
      bank,
      { temperature: 15 },
      { tools: ["gauge"], notAgain: ["outletFlow"] },
    );
    for (const { test } of proposed) {
      expect(["airCharge", "outletFlow", "temperature"]).not.toContain(test);
      const { tool }: Test = TESTS[test];
      expect(tool === undefined || tool === "gauge").toBe(true);
    }
  });

  it("a set-up counts once: with the tank already empty its charge takes three minutes, not fifteen", () => {
    expect(minutesOf("airCharge", {})).toBe(3 + SET_UPS.tankEmptied);
    expect(minutesOf("airCharge", { setUps: ["tankEmptied"] })).toBe(3);
  });

  it("a busy kitchen never moves a test that takes its water forward", () => {
    const { bank, all } = weakTap();
    const readings = { temperature: all.temperature!, outletFlow: all.outletFlow! };
    const rank = (busy: boolean) =>
      nextTests(engine, bank, readings, { kitchenBusy: busy }).findIndex(({ test }) => {
        const one: Test = TESTS[test];
        return one.disturbsKitchen === true;
      });
    expect(rank(true)).toBeGreaterThanOrEqual(rank(false));
  });
});

it("an empty tank makes its air charge the better test", () => {
  const { bank, all } = weakTap();
  const readings = { temperature: all.temperature!, tankFullPressure: all.tankFullPressure! };
  const place = (setUps: readonly ["tankEmptied"] | readonly []) =>
    nextTests(engine, bank, readings, { setUps }).findIndex(({ test }) => test === "airCharge");
  expect(place(["tankEmptied"])).toBeLessThanOrEqual(place([]));
});

it("what each outcome would mean adds up to everything", () => {
  const { bank } = weakTap();
  const meanings = meaningsOf("bucket", engine, bank, {});
  expect(meanings.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 6);
});

it("the same readings give the same advice, and no reading at all gives a test", () => {
  const { bank, all } = weakTap();
  expect(advise(engine, bank, {}).step.kind).toBe("test");
  const { temperature, feedTds } = all;
  const some = { temperature: temperature!, feedTds: feedTds! };
  expect(advise(engine, bank, some)).toEqual(advise(engine, donorBank(bank.expected.scene), some));
});

it("a closed tank valve that was seen is opened, not tested further", () => {
  const one = simulateCase(["tankValveClosed"], seededRandom(4));
  const advice = advise(engine, donorBank(one.scene), {
    tankValveShut: 1,
    outletFlow: one.readings.outletFlow,
  });
  expect(advice.step).toMatchObject({ kind: "repair", cause: "tankValveClosed" });
});
