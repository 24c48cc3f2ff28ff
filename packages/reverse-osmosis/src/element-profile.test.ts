import { expect, it } from "vitest";
import { elementProfile } from "./element-profile.ts";
import { operatingPoint } from "./operating-point.ts";
import { simpleUnit } from "./simple-unit.ts";

// Check S8 of the membrane notes (an ODE solved apart): 0.40 m², A 5, B 0.5, 3.45 bar, 300 mg/L, recovery 0.22: Cc 381.7, Cp 10.30 mg/L.
const unit = simpleUnit(
  { areaM2: 0.4, waterLPerM2HBar: 5, saltLPerM2H: 0.5 },
  { ratedLPerH: 22.546, ratedKPa: 345 },
);
const at = { feedPressureKPaGauge: 345, temperatureC: 25, feedMgPerL: 300, tankPressureKPaGauge: 0 };

it("ends at the concentrate of the published element, and its mean flux is its permeate (0.3 %: first-order steps)", () => {
  const profile = elementProfile(unit, at);
  if (profile.kind !== "known") throw new Error(profile.kind);
  const { value } = profile;
  expect(value[0]!.feedSideMgPerL).toBe(300);
  expect(Math.abs(value.at(-1)!.feedSideMgPerL / 381.7 - 1)).toBeLessThan(0.003);
  const mean = value.slice(0, -1).reduce((sum, one) => sum + one.fluxLPerM2H, 0) / (value.length - 1);
  expect(Math.abs((mean * 0.4) / 6.3591 - 1)).toBeLessThan(0.003);
});

it("flux falls and everything dissolved rises towards the concentrate end", () => {
  const profile = elementProfile(unit, at);
  if (profile.kind !== "known") throw new Error(profile.kind);
  for (const [i, one] of profile.value.slice(1).entries()) {
    const before = profile.value[i]!;
    expect(one.fluxLPerM2H).toBeLessThan(before.fluxLPerM2H);
    expect(one.permeateMgPerL).toBeGreaterThan(before.permeateMgPerL);
  }
  const idle = { ...at, tankPressureKPaGauge: 500 };
  expect(operatingPoint(unit, idle).kind).toBe("tank-above-feed");
  expect(elementProfile(unit, idle)).toMatchObject({ kind: "refused", code: "tank-above-feed" });
});
