import { expect, it } from "vitest";
import { unitVerbs } from "./unit.ts";

const row = {
  area_m2: "1.1",
  A_L_m2_h_bar: "4.3",
  B_L_m2_h: "0.66",
  feed_pressure_kPa_gauge: "413.7",
  temperature_C: "20",
  feed_NaCl_mg_L: "265",
};
const answer = (more: Readonly<Record<string, string>>) => unitVerbs.unit!.row({ ...row, ...more });
const drainMLPerMin = (more: Readonly<Record<string, string>>) => {
  const outcome = answer(more);
  if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
  return Number(outcome.value.concentrate_L_h) / 0.06;
};

// 0.8 mm sharp hole 538 mL/min (Encyclopaedia Britannica, 11th ed.), capillary 0.6 mm × 0.3 m 105 mL/min (±20 %), both at 60 psi and 20 °C.
it("a hole and a capillary drain what their bore lets by", () => {
  expect(
    Math.abs(drainMLPerMin({ restrictor_kind: "orifice", restrictor_bore_mm: "0.8" }) / 538 - 1),
  ).toBeLessThan(0.01);
  const capillary = { restrictor_kind: "capillary", restrictor_bore_mm: "0.6", restrictor_length_m: "0.3" };
  expect(Math.abs(drainMLPerMin(capillary) / 105 - 1)).toBeLessThan(0.2);
});

it("a line takes from what drains; its bore left blank is the usual one", () => {
  const rated = { restrictor_L_h: "60" };
  const bare = drainMLPerMin(rated);
  const usual = drainMLPerMin({ ...rated, drain_tube_length_m: "3" });
  expect(usual).toBeLessThan(bare);
  expect(drainMLPerMin({ ...rated, drain_tube_length_m: "3", drain_tube_bore_mm: "4.318" })).toBeCloseTo(
    usual,
    9,
  );
});

it("what is missing or cannot be is named by its column", () => {
  expect(answer({})).toMatchObject({ kind: "missing", missing: ["restrictor_L_h"] });
  expect(answer({ restrictor_kind: "capillary", restrictor_bore_mm: "0.3" })).toMatchObject({
    missing: ["restrictor_length_m"],
  });
  expect(answer({ restrictor_kind: "orifice", restrictor_bore_mm: "80" })).toMatchObject({
    code: "out-of-range",
    detail: { name: "restrictor_bore_mm" },
  });
  expect(answer({ restrictor_L_h: "-3" })).toMatchObject({
    code: "not-positive",
    detail: { name: "restrictor_L_h" },
  });
  expect(answer({ restrictor_L_h: "60", feed_tube_length_m: "900" })).toMatchObject({
    detail: { name: "feed_tube_length_m" },
  });
});
