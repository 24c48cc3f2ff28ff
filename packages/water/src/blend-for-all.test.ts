import { known } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import { blendForAll } from "./blend-for-all.ts";
import { blendRange } from "./blend-range.ts";
import { remineralise } from "./remineralise.ts";
import { speciate } from "./speciate.ts";
import type { WaterLimit } from "./suits.ts";

const solved = (pH: number, alkalinity: number, ions: Record<string, number>) => {
  const water = speciate({ temperatureC: 15, pH, alkalinityMgPerLCaCO3: alkalinity, ions });
  if (water.kind !== "known") throw new Error(water.kind);
  return water.value;
};
const feed = solved(7.5, 140, { Ca: 60, Mg: 8, Na: 60, Cl: 100, SO4: 40 });
const permeate = solved(6, 8, { Ca: 2, Mg: 0.3, Na: 4, Cl: 5, SO4: 0.5 });
const limit = (
  property: WaterLimit["property"],
  appliance: string,
  low?: number,
  high?: number,
): WaterLimit => ({
  property,
  appliance,
  ...(low !== undefined && { low }),
  ...(high !== undefined && { high }),
  unit: "mg/L",
  source: "label",
});
const answerOf = (...groups: Parameters<typeof blendForAll>[2]) => {
  const answer = blendForAll(feed, permeate, groups);
  if (answer.kind !== "known") throw new Error(answer.kind);
  return answer.value;
};

/** Chloride of a blend is 5 + 95 f: mass balance, trade formula (common practice). */
describe("one blend for all appliances", () => {
  const oven = limit("chloride", "oven", undefined, 24.1);
  const brewer = limit("chloride", "brewer", 14.4, undefined);
  it("is where the ranges of all meet: chloride 14.4 to 24.1 mg/L is 10 to 20 % feed in steps of one", () => {
    expect(answerOf({ limits: [oven] }, { limits: [brewer] })).toMatchObject({
      kind: "range",
      lowFeedFraction: 0.1,
      highFeedFraction: 0.2,
    });
  });
  it("names the two limits of two appliances that stand against each other", () => {
    const thirsty = limit("chloride", "brewer", 40, undefined);
    const answer = answerOf({ limits: [oven] }, { limits: [thirsty] });
    expect(answer).toMatchObject({ kind: "none", broken: [], conflicts: [[oven, thirsty]] });
  });
  it("names a limit that no blend keeps by itself", () => {
    const never = limit("chloride", "ice", undefined, 1);
    expect(answerOf({ limits: [oven] }, { limits: [never] })).toMatchObject({
      kind: "none",
      broken: [never],
    });
  });
  it("one group answers as the blend range does", () => {
    expect(blendForAll(feed, permeate, [{ limits: [oven, brewer] }])).toEqual(
      blendRange(feed, permeate, [oven, brewer]),
    );
  });
  it("a remineraliser counts only for what stands behind it: permeate alone gets its hardness there", () => {
    const hard = limit("hardness", "brewer", 25, undefined);
    const after = (water: Parameters<typeof remineralise>[0]) => {
      const done = remineralise(water, 1);
      return done.kind === "known" ? known(done.value.water) : done;
    };
    const behind = answerOf({ limits: [hard], options: { after } }, { limits: [oven] });
    expect(behind).toMatchObject({ kind: "range", lowFeedFraction: 0 });
    expect(answerOf({ limits: [hard] }, { limits: [oven] })).not.toMatchObject({ lowFeedFraction: 0 });
  });
});
