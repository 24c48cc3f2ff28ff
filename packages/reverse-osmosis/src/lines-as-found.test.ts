import { expect, it } from "vitest";
import { lineAsFound, lineLossKPa, linesAsFound } from "./lines-as-found.ts";

const FOOT_M = 0.3048;
const TEN_FEET = { feedTubeLengthM: 10 * FOOT_M, outletTubeLengthM: 10 * FOOT_M };

// Losses of 10 ft of 1/4 in and 3/8 in tube by Darcy–Weisbach, computed apart (rows K14 to K16 of the tubing table).
it.each([
  ["feed", 18, 1.789, 0.01],
  ["feed", 90, 35.22, 0.03],
  ["outlet", 227.125, 28.09, 0.03],
] as const)("%s of usual bore, 10 ft at %f L/h: %f kPa", (line, lPerH, kPa, share) => {
  const tube = lineAsFound(line, TEN_FEET);
  if (tube.kind !== "known") throw new Error(tube.kind);
  expect(Math.abs(lineLossKPa(tube.value, lPerH) / kPa - 1)).toBeLessThan(share);
});

it("a line without a length is not counted; its bore alone changes nothing", () => {
  expect(linesAsFound({})).toEqual({});
  expect(linesAsFound({ drainTubeBoreMm: 2.5 })).toEqual({});
  expect(linesAsFound({ drainTubeLengthM: 2, drainTubeBoreMm: 2.5 })).toEqual({
    drainTubes: [{ boreMm: 2.5, lengthM: 2 }],
  });
});

it("a bore or length that cannot be, and a line no unit would work with, are refused and not counted", () => {
  expect(lineAsFound("feed", { feedTubeLengthM: 3, feedTubeBoreMm: 0.17 })).toMatchObject({
    code: "out-of-range",
    detail: { name: "boreMm", low: 2, high: 20 },
  });
  expect(lineAsFound("feed", { feedTubeLengthM: 300 })).toMatchObject({ code: "out-of-range" });
  const long = { drainTubeLengthM: 90, drainTubeBoreMm: 2.5 };
  expect(lineAsFound("drain", long)).toMatchObject({ kind: "refused", code: "line-takes-too-much" });
  expect(linesAsFound(long)).toEqual({});
});
