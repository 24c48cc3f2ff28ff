import { describe, expect, it } from "vitest";
import { assess } from "./assess.ts";
import { monthsLater, USUAL_MONTHS } from "./due.ts";
import { convertTds } from "./internal/tds-scale.ts";
import { rulesOf } from "./limits.ts";
import { context, cup, fileOf, N1, ppm, type TypedReadings, visitOf } from "./testing/build.ts";

const judge = (readings: TypedReadings, unit = N1, more = {}) =>
  assess(
    fileOf("Mill Hollow infants", unit, [], [visitOf("today", "annual", "2026-11-25", readings, more)]),
    "today",
    context,
  );
const finding = (readings: TypedReadings, id: string, unit = N1) =>
  judge(readings, unit).findings.find((one) => one.id === id);

describe("common practice, no source", () => {
  const rules = rulesOf(context);
  it("60 to 100 psi feed", () => {
    expect(rules.feedPressure.low).toBeCloseTo(60, 9);
    expect(rules.feedPressure.high).toBeCloseTo(100, 9);
    expect(finding({ beforeFilterPressure: [75, "psi"] }, "feedPressure")?.verdict).toBe("within");
    expect(finding({ beforeFilterPressure: [40, "psi"] }, "feedPressure")?.verdict).toBe("outside");
  });
  it("8 to 10 psi air when no appliance says its minimum", () => {
    expect([rules.airCharge.low, rules.airCharge.high].map((x) => x.toFixed(6))).toEqual([
      "8.000000",
      "10.000000",
    ]);
  });
  it("100 ppm or less: RO is optional, and what was not measured is named", () => {
    expect(finding({ feedTds: ppm(100) }, "roOptional")).toMatchObject({
      verdict: "information",
      missing: expect.arrayContaining(["hardness", "chloride", "chlorine"]),
      limit: { high: 100, scale: "NaCl" },
    });
    expect(finding({ feedTds: ppm(101) }, "roOptional")).toBeUndefined();
  });
  it("pre-filters one year, membrane two", () => {
    expect([USUAL_MONTHS.sediment, USUAL_MONTHS.element]).toEqual([12, 24]);
    expect(monthsLater("2024-02-29", 12)).toBe("2025-02-28");
    expect(monthsLater("2026-11-25", 24)).toBe("2028-11-25");
  });
  it("299 to 15 ppm is 95.0 % reduction", () => {
    const outcome = judge({ feedTds: ppm(299), permeateTds: ppm(15) }).figures.asFound.percentReduction;
    expect(outcome.kind === "known" && outcome.value.value.toFixed(1)).toBe("95.0");
  });
  it("a healthy 53 L tank takes 1.8 to 3.2 h, not 60 min, to fill (independent model)", () => {
    const outcome = judge({
      ...{
        feedTds: ppm(214),
        feedTemperature: [15, "°C"],
        beforeFilterPressure: [62, "psi"],
        afterFilterPressure: [61, "psi"],
      },
      ...{ permeateFlow: cup(0.5, 69), drainFlow: cup(1, 60), permeateTds: ppm(8), airCharge: [9, "psi"] },
    }).figures.asFound.fillingHours;
    expect(outcome.kind === "known" && outcome.value.value > 1.7 && outcome.value.value < 3.3).toBe(true);
  });
  it("100 on the 442 scale is about 73 on the sodium chloride scale (meter manual's table)", () => {
    expect(convertTds(100, "442", "NaCl")).toBeCloseTo(73, -0.5);
    expect(convertTds(1000, "442", "NaCl")).toBeCloseTo(702.1, 1);
    expect(convertTds(convertTds(321, "442", "NaCl"), "NaCl", "442")).toBeCloseTo(321, 9);
  });
});

describe("a tank", () => {
  it("of 53 L at 40 psi that gives 2 L down to 18 psi holds water on its air side (computed by Boyle's law)", () => {
    const readings: TypedReadings = {
      tankFullPressure: [40, "psi"],
      drawnVolume: [2, "L"],
      tankAfterPressure: [18, "psi"],
    };
    expect(finding(readings, "waterlogged")).toMatchObject({ verdict: "outside", action: "replace:tank" });
    expect(finding(readings, "waterlogged")?.figure?.value).toBeCloseTo(3.0, 1);
  });
  it("of 53 L from 42 to 27 psi over 8 L is charged to 9.1 psi (computed by Boyle's law)", () => {
    const { airCharge } = judge({ tankFullPressure: [42, "psi"], tankAfterPressure: [27, "psi"] }).figures
      .asFound;
    expect(airCharge.kind === "known" && airCharge.value.value).toBeCloseTo(9.1, 1);
  });
  it("with a remineraliser may deliver more than the membrane makes", () => {
    const readings = { permeateTds: ppm(9), deliveredTds: ppm(58) };
    const unit = { ...N1, remineraliser: true };
    expect(finding(readings, "deliveredOverMembrane", unit)?.verdict).toBe("information");
    expect(finding(readings, "deliveredOverMembrane")?.verdict).toBe("outside");
  });
});

describe("a port that is not there", () => {
  const unit = { ...N1, portsAbsent: ["permeateToWaste", "tank", "afterFilter"] as const };
  it.each([
    ["saltPassage", "permeateToWaste"],
    ["airCharge", "tank"],
    ["filterDrop", "afterFilter"],
    ["chlorineAfterCarbon", "afterFilter"],
  ])("is named where %s cannot be told for want of it", (id, port) => {
    const found = finding({ feedTds: ppm(200) }, id, unit);
    expect(found?.verdict).toBe("cannotTell");
    expect(String(found?.detail?.fit).split(" ")).toContain(port);
    expect(found?.detail?.why).toBe("noPort");
  });
  it("is not named where there is one and nobody read it", () => {
    expect(finding({ feedTds: ppm(200) }, "saltPassage", N1)?.detail?.why).not.toBe("noPort");
  });
});

describe("slips are asked about", () => {
  const asked = (readings: TypedReadings) => judge(readings).questions.map((one) => one.id);
  it.each<[string, TypedReadings]>([
    ["barAsPsi", { beforeFilterPressure: [4.2, "psi"] }],
    ["psiAsBar", { beforeFilterPressure: [61, "bar"] }],
    ["fahrenheitAsCelsius", { feedTemperature: [55, "°C"] }],
    ["pressuresOutOfOrder", { beforeFilterPressure: [51, "psi"], afterFilterPressure: [61, "psi"] }],
    ["permeateAboveFeed", { feedTds: ppm(15), permeateTds: ppm(299) }],
    ["deliveredAboveFeed", { feedTds: ppm(120), deliveredTds: ppm(300) }],
    ["deliveredBelowPermeate", { permeateTds: ppm(40), deliveredTds: ppm(9) }],
    ["flowsSwapped", { permeateFlow: cup(1, 60), drainFlow: cup(0.5, 81) }],
    ["tankRoseWhileDrawing", { tankFullPressure: [24, "psi"], tankAfterPressure: [42, "psi"] }],
  ])("%s", (id, readings) => expect(asked(readings)).toContain(id));
  it("and a plain visit is not", () =>
    expect(asked({ feedTds: ppm(299), permeateTds: ppm(15) })).toEqual([]));
});

describe("what cannot be read", () => {
  it("nothing but TDS still gives percent reduction and names the rest", () => {
    const judged = judge({ feedTds: ppm(299), permeateTds: ppm(15), deliveredTds: ppm(20) });
    expect(judged.figures.asFound.percentReduction.kind).toBe("known");
    const flow = judged.findings.find((one) => one.id === "membraneFlow");
    expect(flow).toMatchObject({
      verdict: "cannotTell",
      missing: expect.arrayContaining(["permeateFlow", "feedTemperature"]),
    });
  });
  it("absent ports are never asked for", () => {
    const { toRead } = judge({}, { ...N1, portsAbsent: ["tank", "afterFilter"] });
    expect(toRead.map((one) => one.slot).filter((slot) => /tank|after/i.test(slot))).toEqual([]);
  });
  it("standing pressure is asked only below 50 or above 75 psi", () => {
    const slots = (psi: number) =>
      judge({ beforeFilterPressure: [psi, "psi"] }).toRead.map((one) => one.slot);
    expect(slots(61)).not.toContain("staticPressure");
    expect(slots(45)).toContain("staticPressure");
    expect(slots(80)).toContain("staticPressure");
  });
  it("a bypassed unit is said first", () => {
    const judged = judge({ feedTds: ppm(299) }, N1, { answers: { inUse: "bypassed" } });
    expect(judged.findings[0]?.id).toBe("bypassed");
    expect(judged.toRead.map((one) => one.slot)).toEqual(["feedTemperature", "waterMeter"]);
  });
});
