import { speciate, type WaterAnalysis } from "@tapside/water";
import { describe, expect, it } from "vitest";
import { type IonOptions, ionsAlongElement } from "./ions-along-element.ts";
import { operatingPoint } from "./operating-point.ts";
import { highestRecovery } from "./questions/highest-recovery.ts";
import { simpleUnit } from "./simple-unit.ts";
import { usualRejections } from "./usual-rejections.ts";

const element = { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 };
const unitWith = (ratedLPerH: number) => simpleUnit(element, { ratedLPerH, ratedKPa: 414 });
const at = (temperatureC: number) => ({
  feedPressureKPaGauge: 414,
  temperatureC,
  feedMgPerL: 400,
  tankPressureKPaGauge: 0,
});
const hard: WaterAnalysis = {
  temperatureC: 15,
  pH: 7.0,
  alkalinityMgPerLCaCO3: 180,
  ions: { Ca: 66, Mg: 10, Na: 20, K: 2, Cl: 30, SO4: 40, NO3: 5, F: 0.2, SiO2: 10 },
};
const along = (ratedLPerH: number, temperatureC = 15, feed = hard, options?: IonOptions) => {
  const outcome = ionsAlongElement(unitWith(ratedLPerH), at(temperatureC), feed, options);
  if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
  return outcome.value;
};

describe("ions along the element", () => {
  it("water and every ion come out as they go in (mass balance, to rounding)", () => {
    const { permeate, concentrate, recovery, places } = along(30);
    const feed = places[0]!.feedSide;
    for (const id of Object.keys(feed.totals) as (keyof typeof feed.totals)[]) {
      const out = recovery * permeate.totals[id] + (1 - recovery) * concentrate.totals[id];
      expect(Math.abs(out - feed.totals[id])).toBeLessThanOrEqual(1e-9 * feed.totals[id]);
    }
    const alkalinity = recovery * permeate.alkalinityEqPerKg + (1 - recovery) * concentrate.alkalinityEqPerKg;
    expect(Math.abs(alkalinity / feed.alkalinityEqPerKg - 1)).toBeLessThan(1e-9);
    const carbon = recovery * permeate.carbonMolPerKg + (1 - recovery) * concentrate.carbonMolPerKg;
    expect(Math.abs(carbon / feed.carbonMolPerKg - 1)).toBeLessThan(1e-9);
  });
  it("recovery and chloride agree with the operating point (0.5 %: steps)", () => {
    const point = operatingPoint(unitWith(30), at(15));
    if (point.kind !== "flowing") throw new Error(point.kind);
    const { recovery, permeate, places } = along(30);
    expect(Math.abs(recovery / point.recovery - 1)).toBeLessThan(0.005);
    const passage = permeate.totals.Cl / places[0]!.feedSide.totals.Cl;
    expect(Math.abs(passage / (1 - point.rejection) - 1)).toBeLessThan(0.01);
  });
  it("permeate pH is the feed's plus log10 of the bicarbonate passage (CO₂ passes freely; 0.08: activity and pairs in the feed, none in the permeate)", () => {
    const { permeate, places } = along(120);
    const feed = places[0]!.feedSide;
    const passage = permeate.alkalinityEqPerKg / feed.alkalinityEqPerKg;
    expect(Math.abs(permeate.pH - (feed.pH + Math.log10(passage)))).toBeLessThan(0.08);
  });
  it("ions held back better than chloride pass less of themselves", () => {
    const { permeate, places } = along(30);
    const passage = (id: "Ca" | "Cl" | "SO4" | "SiO2") =>
      permeate.totals[id] / places[0]!.feedSide.totals[id];
    expect(passage("SO4")).toBeLessThan(passage("Ca"));
    expect(passage("Ca")).toBeLessThan(passage("Cl"));
    expect(passage("Cl")).toBeLessThan(passage("SiO2"));
  });
  it("the concentrate's pH rises and the permeate's falls", () => {
    const { permeate, concentrate, places } = along(20);
    expect(concentrate.pH).toBeGreaterThan(places[0]!.feedSide.pH);
    expect(permeate.pH).toBeLessThan(places[0]!.feedSide.pH);
  });
});

describe("scale along the element", () => {
  it("names the mineral and the recovery where it starts, as the whole-element search finds it (3 points)", () => {
    const solved = speciate(hard);
    if (solved.kind !== "known") throw new Error(solved.kind);
    expect(solved.value.saturation.calcite).toBeLessThan(0);
    const { scale } = along(10);
    if (scale.kind !== "scales") throw new Error(scale.kind);
    expect(scale.mineral).toBe("calcite");
    const whole = highestRecovery(hard, { rejections: usualRejections });
    if (whole.kind !== "known") throw new Error(whole.kind);
    expect(Math.abs(scale.fromRecovery - whole.value.recovery)).toBeLessThan(0.03);
  });
  it("calcite is less soluble in warm water: it starts earlier in summer than in winter", () => {
    const [winter, summer] = [along(8, 6).scale, along(8, 20).scale];
    const from = (scale: typeof winter) =>
      scale.kind === "scales" ? scale.fromRecovery : scale.kind === "none" ? 1 : 0;
    expect(from(summer)).toBeLessThan(from(winter));
  });
  it("a gypsum water scales with gypsum; a soft one does not; an oversaturated feed says so", () => {
    const gypsum = {
      ...hard,
      pH: 6.2,
      alkalinityMgPerLCaCO3: 20,
      ions: { Ca: 480, Na: 60, SO4: 1150, Cl: 60 },
    };
    expect(along(8, 20, gypsum).scale.mineral).toBe("gypsum");
    const soft = { ...hard, alkalinityMgPerLCaCO3: 20, ions: { Ca: 8, Na: 8, Cl: 8, SO4: 8, SiO2: 4 } };
    expect(along(30, 15, soft).scale.kind).toBe("none");
    expect(along(30, 15, { ...hard, pH: 8.4 }).scale.kind).toBe("feed-already-scales");
  });
});
