import { expect, it } from "vitest";
import { noteOf, signsOf } from "./case-from-file.ts";
import { measuredAgain } from "./measured-again.ts";
import type { Scene } from "./scene.ts";
import { sceneAfterRepairs } from "./scene-after-repairs.ts";

const visitWith = (answers: object) =>
  ({ readings: { asFound: {}, asLeft: {} }, answers }) as Parameters<typeof signsOf>[0];

it("what was noted after a repair stands beside what was noted before, and is not taken for it", () => {
  const visit = visitWith({ [noteOf("drawOffL")]: 2, [noteOf("drawOffL", "asLeft")]: 14 });
  expect(signsOf(visit, "asFound", 101.3)).toEqual({ drawOffL: 2 });
  expect(signsOf(visit, "asLeft", 101.3)).toEqual({ drawOffL: 14 });
});

it("a second repair keeps what the first dropped out of the readings", () => {
  const before = { temperature: 14, afterFilterPressure: 140, drawOffL: 2 };
  const again = { afterFilterPressure: 390 };
  expect(measuredAgain(before, ["preFilterClogged", "airChargeLow"], again)).toEqual({
    temperature: 14,
    afterFilterPressure: 390,
  });
});

it("a new cartridge starts young, and leaves the age of the element as it was", () => {
  const scene = {
    complaint: "runsOut",
    elementYears: 2.5,
    filterMonths: 26,
    carbonShare: 1.8,
  } as unknown as Scene;
  expect(sceneAfterRepairs(scene, ["preFilterClogged"])).toEqual({
    complaint: "routine",
    elementYears: 2.5,
    filterMonths: 0,
    carbonShare: 1.8,
  });
});
