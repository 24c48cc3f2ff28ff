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

it("standby: a tap that drips 50 mL/min starts the unit again and again; more than the membrane lets back is named", () => {
  const answer = (more: Readonly<Record<string, string>>) => {
    const outcome = unitVerbs["unit standby"]!.row({
      ...row,
      back_leak_L_h_bar: "",
      standing_h: "10",
      ...more,
    });
    if (outcome.kind !== "known") throw new Error(outcome.kind);
    return outcome.value;
  };
  const tap = answer({ leak_mL_min: "50" });
  expect(tap.leak_night).toBe("cycling");
  expect(tap.leak_starts_low).toBe(tap.leak_starts_high);
  expect(Number(tap.leak_first_mg_L)).toBeGreaterThan(Number(tap.sound_first_mg_L));
  const unsaid = answer({ leak_mL_min: "50", shutoff_hysteresis: "" });
  expect(Number(unsaid.leak_starts_low)).toBeLessThan(Number(unsaid.leak_starts_high));
  expect(answer({ leak_mL_min: "900", leak_at: "checkValve" }).leak_night).toBe("leak-above-membrane");
  expect(answer({}).leak_night).toBeUndefined();
});

it("questions: the best charge is the appliance's minimum less 2 psi; a second tank holds as much again", () => {
  const outcome = unitVerbs["unit questions"]!.row({ ...row, minimum_kPa_gauge: "137.9" });
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  expect(Number(outcome.value.best_charge_kPa_gauge)).toBeCloseTo(137.9 - 2 * 6.894757, 3);
  expect(Number(outcome.value.second_tank_L)).toBeCloseTo(Number(outcome.value.usable_L), 3);
  expect(outcome.value.second_tank_L_says).toBe("more");
});

// Calcium and alkalinity near saturation: calcite sets the recovery, in summer before winter.
const hard = { T_C: "12", pH: "7.4", Alk_CaCO3_mg: "150", Ca_mg: "60", Mg_mg: "5", Na_mg: "10", Cl_mg: "20" };

it("questions: with an analysis the restrictor is held below scale, and the mineral is named; without one nothing is said of it", () => {
  const answer = (more: Readonly<Record<string, string>>) => {
    const outcome = unitVerbs["unit questions"]!.row({ ...row, wanted_recovery: "0.7", ...more });
    if (outcome.kind !== "known") throw new Error(outcome.kind);
    return outcome.value;
  };
  const [plain, scaling] = [answer({}), answer(hard)];
  expect(plain.recovery_set_by).toBe("wanted");
  expect([plain.scale_winter, plain.scale_from_recovery_summer]).toEqual(["", ""]);
  expect(scaling.recovery_set_by).toBe("scale");
  expect([scaling.scale_winter, scaling.scale_summer]).toEqual(["calcite", "calcite"]);
  expect(Number(scaling.scale_from_recovery_summer)).toBeLessThan(Number(scaling.scale_from_recovery_winter));
  expect(Number(scaling.recovery_summer)).toBeLessThanOrEqual(
    Number(scaling.scale_from_recovery_summer) + 1e-6,
  );
  expect(Number(scaling.restrictor_for_recovery_L_h)).toBeGreaterThan(
    Number(plain.restrictor_for_recovery_L_h),
  );
});

it("questions: an element that lets half the salt and twice the water through fills sooner and cleaner; one not told of is not answered", () => {
  const outcome = unitVerbs["unit questions"]!.row({ ...row, new_A_L_m2_h_bar: "8.6", new_B_L_m2_h: "0.33" });
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  expect(outcome.value.new_element_h_says).toBe("less");
  expect(outcome.value.new_element_mg_L_says).toBe("less");
  const none = unitVerbs["unit questions"]!.row(row);
  expect(none.kind === "known" ? none.value.new_element_h : "").toBeUndefined();
});
