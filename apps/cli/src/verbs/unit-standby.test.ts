import { expect, it } from "vitest";
import { unitVerbs } from "./unit.ts";

// The worked "water bill" visit: 53 L at 9 psi, feed 4.00 bar, 21 °C, 265 mg/L; about 600 L a day to waste (computed apart).
const row = {
  area_m2: "1.1",
  A_L_m2_h_bar: "4.3",
  B_L_m2_h: "0.66",
  beta: "1.1",
  restrictor_L_h: "35",
  tank_L: "53",
  air_charge_kPa_gauge: "62.05",
  shutoff_ratio: "0.638",
  shutoff_hysteresis: "0.052",
  feed_pressure_kPa_gauge: "400",
  temperature_C: "21",
  feed_NaCl_mg_L: "265",
  back_leak_L_h_bar: "1000000",
};

it("standby: a leaking check valve wastes about 600 L a day, and a night's standing wants minutes of waste", () => {
  const outcome = unitVerbs["unit standby"]!.row(row);
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  expect(outcome.value.night).toBe("cycling");
  expect(Math.abs(Number(outcome.value.night_drain_L_day) / 600 - 1)).toBeLessThan(0.04);
  expect(Number(outcome.value.waste_min_low)).toBeLessThan(Number(outcome.value.waste_min_high));
});

it("questions: the best charge is the appliance's minimum less 2 psi; a second tank holds as much again", () => {
  const outcome = unitVerbs["unit questions"]!.row({ ...row, minimum_kPa_gauge: "137.9" });
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  expect(Number(outcome.value.best_charge_kPa_gauge)).toBeCloseTo(137.9 - 2 * 6.894757, 3);
  expect(Number(outcome.value.second_tank_L)).toBeCloseTo(Number(outcome.value.usable_L), 3);
  expect(outcome.value.second_tank_L_says).toBe("more");
});
