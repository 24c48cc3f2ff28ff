import { known, mapOutcome } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import type { ConservedWater, IonsMgPerL } from "./analysis.ts";
import { blendRange, sureBlendRange } from "./blend-range.ts";
import { remineralise } from "./remineralise.ts";
import { speciate } from "./speciate.ts";
import { suits, type WaterLimit } from "./suits.ts";
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

describe("blend that suits all, with readings that leave the feed open", () => {
  const richer = solved(7.5, 250, { Ca: 100, Mg: 12.15, Na: 95, Cl: 200, SO4: 40 });
  const limits = [limit("chloride", undefined, 25)];
  const highest = (...feeds: readonly Water[]) => {
    const outcome = sureBlendRange(
      feeds.map((one) => ({ feed: one, permeate })),
      limits,
      {},
      100,
    );
    if (outcome.kind !== "known" || outcome.value.kind !== "range") throw new Error("no range");
    return outcome.value.highFeedFraction;
  };
  it("is the range of the least favourable of few waters: (25 − 5)/(200 − 5) (trade formula, common practice)", () => {
    expect(highest(feed, richer)).toBe(Math.floor((100 * (25 - 5)) / (200 - 5)) / 100);
    expect(highest(feed)).toBeGreaterThan(highest(feed, richer));
  });
  it("is not narrowed by one water in twenty", () => {
    expect(highest(...Array.from({ length: 19 }, () => feed), richer)).toBe(highest(feed));
    expect(highest(...Array.from({ length: 18 }, () => feed), richer, richer)).toBe(highest(richer));
  });
  it("refuses no water", () => {
    expect(sureBlendRange([], limits)).toMatchObject({ kind: "refused", code: "no-water" });
  });
});

describe("what a blend passes on its way", () => {
  it("a calcite contactor after the valve lifts pH and hardness at every blend", () => {
    const limits = [limit("pH", 6.8, 9), limit("hardness", 20, 120)];
    const plain = blendRange(permeate, permeate, limits);
    const after = (water: ConservedWater) =>
      mapOutcome(remineralise(water, 0.8), (done) => known(done.water));
    const treated = blendRange(permeate, permeate, limits, { after });
    expect(plain).toMatchObject({ value: { kind: "none" } });
    expect(treated).toMatchObject({ value: { kind: "range", lowFeedFraction: 0, highFeedFraction: 1 } });
  });
  it("chlorine is a mass balance: 1 mg/L in the feed and none in permeate keep 0.1 up to a tenth", () => {
    const outcome = blendRange(feed, permeate, [limit("totalChlorine", undefined, 0.1)], {
      totalChlorineMgPerL: 1,
      permeateChlorineMgPerL: 0,
    });
    expect(outcome).toMatchObject({ value: { byLimit: [{ kept: [0, 0.1] }] } });
  });
  /** Mass balance: a fifth of a feed with 0.5 mg/L brings 0.1, whatever the permeate holds. */
  it("chlorine read in the feed only rules out the blends it breaks alone", () => {
    const limits = [limit("totalChlorine", undefined, 0.1), limit("chloride", undefined, 50)];
    const outcome = blendRange(feed, permeate, limits, { totalChlorineMgPerL: 0.5 });
    expect(outcome).toMatchObject({
      value: { kind: "range", lowFeedFraction: 0, highFeedFraction: 0.2, byLimit: [{}, { kept: [0, 0.47] }] },
    });
    expect(outcome.kind === "known" && outcome.value.byLimit[0]!.kept).toBe(undefined);
  });
  it("chlorine that was not read is not judged", () => {
    const outcome = suits([feed], [limit("totalChlorine", undefined, 0.1)]);
    expect(outcome).toMatchObject({ value: [{ answer: "cannot-tell" }] });
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
