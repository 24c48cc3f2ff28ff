import { describe, expect, it } from "vitest";
import type { IonsMgPerL } from "./analysis.ts";
import { speciate } from "./speciate.ts";
import { blendRange, suits, type WaterLimit } from "./suits.ts";
import type { Water } from "./water.ts";

const solved = (pH: number, alkalinityMgPerLCaCO3: number, ions: IonsMgPerL): Water => {
  const outcome = speciate({ temperatureC: 20, pH, alkalinityMgPerLCaCO3, ions });
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  return outcome.value;
};
const feed = solved(7.5, 250, { Ca: 100, Mg: 12.15, Na: 30, Cl: 100, SO4: 40 });
const permeate = solved(6, 12.5, { Ca: 5, Mg: 0.6, Na: 5, Cl: 5, SO4: 0.5 });

const limit = (property: WaterLimit["property"], low?: number, high?: number): WaterLimit => ({
  property,
  unit: "mg/L",
  source: "label of an invented appliance",
  ...(low === undefined ? {} : { low }),
  ...(high === undefined ? {} : { high }),
});

describe("blend that suits all", () => {
  it("is the mass balance x = (Ct − Cp)/(Cf − Cp) (trade formula, common practice)", () => {
    const outcome = blendRange(feed, permeate, [limit("chloride", undefined, 25)]);
    expect(outcome).toMatchObject({ value: { kind: "range", lowFeedFraction: 0 } });
    const highest = (25 - 5) / (100 - 5);
    expect(outcome.kind === "known" && outcome.value.kind === "range" && outcome.value.highFeedFraction).toBe(
      Math.floor(highest * 100) / 100,
    );
  });
  it("names the two limits that no blend keeps together", () => {
    const outcome = blendRange(feed, permeate, [
      limit("chloride", undefined, 25),
      limit("alkalinity", 80, 120),
      limit("pH", 5, 9),
    ]);
    expect(outcome).toMatchObject({
      value: {
        kind: "none",
        broken: [],
        conflicts: [[{ property: "chloride" }, { property: "alkalinity" }]],
      },
    });
  });
  it("names a limit no blend keeps", () => {
    const outcome = blendRange(feed, permeate, [limit("chloride", undefined, 2)]);
    expect(outcome).toMatchObject({ value: { kind: "none", broken: [{ property: "chloride" }] } });
  });
});

describe("limits against samples", () => {
  it("says too close when the samples disagree", () => {
    const outcome = suits([feed, permeate], [limit("chloride", undefined, 50), limit("pH", 5, 9)]);
    expect(outcome.kind === "known" && outcome.value.map(({ answer }) => answer)).toEqual([
      "too-close-to-say",
      "within",
    ]);
  });
  it("refuses no water", () => {
    expect(suits([], [])).toMatchObject({ kind: "refused", code: "no-water" });
  });
});
