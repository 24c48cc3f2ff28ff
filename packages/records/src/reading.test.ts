import { expect, test } from "vitest";
import { inBaseUnit, isUnusual, makeReading } from "./reading.ts";

const at = "2026-03-02T09:00:00+01:00";

test("a typed number becomes a reading with its raw text, unit and port", () => {
  expect(
    makeReading({ slot: "beforeFilterPressure", raw: "51,6", unit: "psi", at, instrument: "g1" }),
  ).toEqual({
    kind: "known",
    value: { raw: "51,6", value: 51.6, unit: "psi", port: "beforeFilter", at, instrument: "g1" },
  });
});

test("a cup of 0.25 L in 60 s is 15 L/h (by definition)", () => {
  const reading = makeReading({ slot: "permeateFlow", raw: "60", unit: "s", at, volumeL: 0.25 });
  expect(reading).toMatchObject({ kind: "known", value: { value: 60, volumeL: 0.25 } });
  expect(inBaseUnit("permeateFlow", 60, "s", 0.25)).toEqual({ kind: "known", value: 15 });
});

test.each([
  ["feedTemperature", "150", "°C", "out-of-range"],
  ["feedTds", "-3", "ppm", "out-of-range"],
  ["permeateFlow", "0", "s", "out-of-range"],
  ["feedTds", "4.5.1", "ppm", "two-decimal-marks"],
  ["feedTds", "12", "psi", "unit-not-for-slot"],
  ["airCharge", "", "psi", "nothing-typed"],
] as const)("%s %s %s is refused: %s", (slot, raw, unit, code) => {
  expect(makeReading({ slot, raw, unit, at })).toMatchObject({ kind: "refused", code });
});

test("an unusual number is taken and asked about", () => {
  expect(isUnusual("beforeFilterPressure", { value: 4, unit: "psi" })).toBe(true);
  expect(isUnusual("beforeFilterPressure", { value: 60, unit: "psi" })).toBe(false);
});
