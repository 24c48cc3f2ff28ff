import { known } from "@tapside/quantities";
import { operatingPoint, simpleUnit } from "@tapside/reverse-osmosis";
import type { WaterAnalysis } from "@tapside/water";
import { describe, expect, it } from "vitest";
import { feedIn, inhibitorOf, restrictorWanted } from "./restrictor-wanted.ts";

const unit = simpleUnit(
  { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 },
  { ratedLPerH: 60, ratedKPa: 414 },
);
const tried = {
  unit,
  conditions: { feedPressureKPaGauge: 414, temperatureC: 12, feedMgPerL: 300, tankPressureKPaGauge: 0 },
  minimumKPaGauge: 0,
};
const soft: WaterAnalysis = {
  temperatureC: 10,
  pH: 7.2,
  alkalinityMgPerLCaCO3: 30,
  ions: { Ca: 12, Mg: 2, Na: 10, Cl: 12, SO4: 10, SiO2: 5 },
};
/** Calcium and alkalinity close to saturation as they come. */
const hard: WaterAnalysis = { ...soft, pH: 7.4, alkalinityMgPerLCaCO3: 150, ions: { ...soft.ions, Ca: 60 } };
const wanted = { recovery: 0.35, seasons: { winter: 6, summer: 20 } };
const inBoth = (water: WaterAnalysis) => ({
  winter: known({ ...water, temperatureC: 6 }),
  summer: known({ ...water, temperatureC: 20 }),
});

describe("the restrictor for a wanted recovery", () => {
  it("gives that recovery in summer when it is fitted, less in winter, and nothing settles of a soft water so far", () => {
    const answer = restrictorWanted(tried, inBoth(soft), wanted);
    if (answer.kind !== "known") throw new Error(answer.kind);
    const { ratedLPerH, ratedKPa, setBy, recovery, scale } = answer.value;
    const fitted = { ...unit, restrictor: { kind: "rated", ratedLPerH, ratedKPa } as const };
    const summer = operatingPoint(fitted, { ...tried.conditions, temperatureC: 20 });
    expect(summer).toMatchObject({ kind: "flowing" });
    expect(summer.kind === "flowing" ? summer.recovery : 0).toBeCloseTo(0.35, 4);
    expect(recovery.winter.value).toBeLessThan(recovery.summer.value);
    expect(setBy).toBe("wanted");
    expect(scale.summer.kind === "known" ? scale.summer.value.recovery : 0).toBeGreaterThan(0.35);
  });
  it("is held below scale of a hard water, and the mineral is named", () => {
    const answer = restrictorWanted(tried, inBoth(hard), { ...wanted, recovery: 0.7 });
    if (answer.kind !== "known") throw new Error(answer.kind);
    const { setBy, recovery, scale } = answer.value;
    expect(setBy).toBe("scale");
    expect(scale.summer).toMatchObject({ kind: "known", value: { mineral: "calcite" } });
    const limit = scale.summer.kind === "known" ? scale.summer.value.recovery : 0;
    expect(recovery.summer.value).toBeLessThanOrEqual(limit + 1e-6);
  });
  it("a scale inhibitor lets calcite rise to what its label holds, and nothing else", () => {
    const limit = (inhibitor: Parameters<typeof restrictorWanted>[3]) => {
      const answer = restrictorWanted(tried, inBoth(hard), { ...wanted, recovery: 0.7 }, inhibitor);
      const scale = answer.kind === "known" ? answer.value.scale.summer : answer;
      if (scale.kind !== "known" || !("recovery" in scale.value)) throw new Error(scale.kind);
      return scale.value.recovery as number;
    };
    expect(limit({ calciteIndex: 0 })).toBe(limit("none"));
    expect(limit({ calciteIndex: 0.5 })).toBeGreaterThan(limit("none") + 0.1);
    const glassy = { ...soft, ions: { ...soft.ions, SiO2: 60 } };
    const bySilica = (inhibitor: Parameters<typeof restrictorWanted>[3]) =>
      restrictorWanted(tried, inBoth(glassy), { ...wanted, recovery: 0.7 }, inhibitor);
    expect(bySilica({ calciteIndex: 2 })).toEqual(bySilica("none"));
    expect(bySilica("none")).toMatchObject({
      value: { scale: { winter: { value: { mineral: "amorphousSilica" } } } },
    });
  });
  it("an inhibitor counts while it is fitted; a label that says nothing is not taken for one that holds", () => {
    const part = { id: "a", unit: "unit", role: "scaleInhibitor" } as const;
    const of = (...parts: Parameters<typeof inhibitorOf>[0]["parts"]) => inhibitorOf({ parts });
    expect(of()).toBe("none");
    expect(of(part)).toBe("notSaid");
    expect(of({ ...part, heldCalciteIndex: 1.5 })).toEqual({ calciteIndex: 1.5 });
    expect(of({ ...part, heldCalciteIndex: 1.5, removedOn: "2026-01-01" }, part)).toBe("notSaid");
  });
  it("is answered without a word of scale where nobody read the feed", () => {
    const file = { visits: [], instruments: new Map() } as unknown as Parameters<typeof feedIn>[0];
    const none = feedIn(file, 6);
    expect(none).toEqual({ kind: "missing", missing: ["feedTds"] });
    const answer = restrictorWanted(tried, { winter: none, summer: none }, wanted);
    expect(answer).toMatchObject({
      kind: "known",
      value: { setBy: "wanted", scale: { winter: { kind: "missing" } } },
    });
  });
});
