import { converted } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import { assess } from "./assess.ts";
import { context, cup, fileOf, N1, type TypedReadings, visitOf } from "./testing/build.ts";

type UnitFields = Parameters<typeof fileOf>[1];

const PSI = 6.894757;
/** A pump known by two points: 60 psi at no flow, nothing at 240 L/h; a parabola between gives 45 psi at 120 L/h. */
const pumped: UnitFields = { ...N1, boosterShutOffRiseKPa: 60 * PSI, boosterOpenFlowLPerH: 240 };
const FLOWS: TypedReadings = { permeateFlow: cup(1, 3600 / 40), drainFlow: cup(1, 3600 / 80) };

const supply = (unit: UnitFields, readings: TypedReadings) =>
  assess(
    fileOf("Mill Hollow infants", unit, [], [visitOf("today", "annual", "2026-11-25", readings)]),
    "today",
    context,
  ).findings.filter(({ id }) => id === "feedPressure" || id === "boostedPressure");
const feed = (psi: number): TypedReadings => ({
  beforeFilterPressure: [psi, "psi"],
  afterFilterPressure: [psi, "psi"],
});

describe("feed pressure of a unit with a booster is judged where the element gets it", () => {
  it("35 psi and 45 psi of the pump at 120 L/h are 80 psi, within 60 to 100; the feed is told beside it", () => {
    const [found, ...more] = supply(pumped, { ...feed(35), ...FLOWS });
    expect(more).toEqual([]);
    expect(found).toMatchObject({ id: "boostedPressure", verdict: "within" });
    expect(found!.figure!.value).toBeCloseTo(80, 1);
    expect(found!.detail).toMatchObject({ unit: "psi", feedIs: "below" });
    expect(found!.detail!.feed).toBeCloseTo(35, 6);
  });
  it("the same feed without a pump is outside, as it always was", () => {
    expect(supply(N1, { ...feed(35), ...FLOWS })).toMatchObject([{ id: "feedPressure", verdict: "outside" }]);
  });
  it("a pump at its open flow adds nothing: too little for the element as well", () => {
    const open = { permeateFlow: cup(1, 3600 / 60), drainFlow: cup(1, 3600 / 180) };
    const [found] = supply(pumped, { ...feed(35), ...open });
    expect(found).toMatchObject({ id: "boostedPressure", verdict: "outside" });
  });
  it("more than the band is outside too: 75 psi and 45 psi", () => {
    expect(supply(pumped, { ...feed(75), ...FLOWS })).toMatchObject([{ verdict: "outside" }]);
  });
  it("below what its switch waits for it stays off, and that is all that is said", () => {
    const found = supply({ ...pumped, boosterOffBelowKPaGauge: 20 * PSI }, { ...feed(12), ...FLOWS });
    expect(found).toMatchObject([{ id: "feedPressure", verdict: "outside" }]);
    expect(found[0]!.detail).toEqual({ pattern: "boosterOff" });
    expect(found[0]!.limit!.low).toBeCloseTo(converted(20 * PSI, "kPa", "psi"), 6);
  });
  it("too close to the switch to say is said, beside the pressure as the pump makes it where it was read to run", () => {
    const found = supply({ ...pumped, boosterOffBelowKPaGauge: 20 * PSI }, { ...feed(20.2), ...FLOWS });
    expect(found.map(({ id }) => id).sort()).toEqual(["boostedPressure", "feedPressure"]);
    expect(found.find(({ id }) => id === "feedPressure")).toMatchObject({ verdict: "tooClose" });
    const below = supply({ ...pumped, boosterOffBelowKPaGauge: 20 * PSI }, { ...feed(19.8), ...FLOWS });
    expect(below).toMatchObject([{ id: "feedPressure", verdict: "tooClose" }]);
  });
  it("without the flows of the day the pump's rise is not known, and they are asked for", () => {
    expect(supply(pumped, feed(35))).toMatchObject([
      { id: "boostedPressure", verdict: "cannotTell", missing: ["permeateFlow", "drainFlow"] },
    ]);
  });
});
