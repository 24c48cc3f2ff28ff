import { expect, it } from "vitest";
import { water } from "./water.ts";

const point = (scale: readonly [number, number, number], index = 1) => ({
  temperatureC: 100,
  calciteIndex: [index, index, index] as const,
  scaleMgPerL: scale,
});

it("says what heating does, with the interval the samples leave", () => {
  expect(water.heated(point([60, 72, 85]))).toBe("Scales lightly at 100 °C: 60–85 mg per litre heated.");
  expect(water.heated(point([0, 0, 0], -1))).toBe("Does not scale at 100 °C: it dissolves lime.");
  expect(water.heated(point([0, 12, 31]))).toBe("Scales a little at 100 °C: 0–31 mg per litre heated.");
});

it("shows a completed figure as its interval and a read one as itself", () => {
  expect(water.range(12.3, 22, 40.4, false)).toBe("12–40");
  expect(water.range(58, 61, 64, true)).toBe("61");
});
