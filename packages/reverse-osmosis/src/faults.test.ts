import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type FaultId, faults } from "./faults.ts";
import { readTable } from "./internal/read-table.test-helper.ts";
import { simpleUnit } from "./simple-unit.ts";
import type { Situation } from "./situation.ts";
import { type PortId, type PortReadings, unitReadings } from "./unit-readings.ts";

const element = { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 };
const plain = simpleUnit(element, { ratedLPerH: 60, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 50 });
const sound: Situation = {
  unit: {
    ...plain,
    cartridges: [{ id: "filters", dropKPa: 10, atLPerH: 80 }],
    booster: { shutOffRiseKPa: 60, openFlowLPerH: 300 },
    outletCartridges: [{ id: "carbon", dropKPa: 15, atLPerH: 120 }],
    carbonPasses: 0.05,
    softenerPasses: 0.06,
  },
  conditions: { feedPressureKPaGauge: 360, temperatureC: 15, feedMgPerL: 300, tankPressureKPaGauge: 0 },
  feedChlorineMgPerL: 0.6,
  feedHardnessMgPerLCaCO3: 220,
  usedLPerDay: 120,
};
function read(situation: Situation): PortReadings {
  const outcome = unitReadings(situation);
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  return outcome.value;
}
const before = read(sound);
const middle = (id: FaultId) => {
  const { low, high } = faults[id];
  return low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
};
const withFault = (id: FaultId, size = middle(id)) => read(faults[id].apply(sound, size));
const ids = Object.keys(faults) as FaultId[];

// reference/fault-signatures/SOURCE.md
const signatures = readTable(readFileSync("reference/fault-signatures/data.csv", "utf8"));

describe("every fault changes the readings it must change", () => {
  it.each(signatures)("$fault: $reading about × $ratio", (row) => {
    const reading = row.reading as PortId;
    const expected = Math.log(Number(row.ratio));
    const found = Math.log(withFault(row.fault as FaultId)[reading]! / before[reading]!);
    expect(Math.sign(found)).toBe(Math.sign(expected));
    expect(Math.abs(found)).toBeGreaterThan(0.02);
    expect(Math.abs(found - expected)).toBeLessThan(0.35 + 0.5 * Math.abs(expected));
  });
  it("a failed check valve drains with the tank full and with the feed closed, and the tank falls", () => {
    const after = withFault("checkValveFailed");
    for (const port of ["drainTankFullLPerH", "drainFeedClosedLPerH", "tankFallKPaPerH"] as const) {
      expect(before[port]).toBe(0);
      expect(after[port]).toBeGreaterThan(1);
    }
  });
  it("a stuck-open shut-off drains with the tank full as with it empty, and not with the feed closed", () => {
    const after = withFault("shutOffStuckOpen");
    expect(after.drainTankFullLPerH! / after.drainLPerH!).toBeCloseTo(1, 1);
    expect(after.drainFeedClosedLPerH).toBe(0);
  });
  it("a blocked drain line comes right with the line off, a blocked restrictor does not", () => {
    const half = withFault("drainLineBlocked", 0.3);
    expect(half.drainLineOffLPerH).toBeCloseTo(before.drainLineOffLPerH!, 9);
    expect(half.drainLPerH).toBeCloseTo(withFault("restrictorBlocked", 0.3).drainLPerH!, 6);
    expect(withFault("restrictorBlocked", 0.3).drainLineOffLPerH! / before.drainLineOffLPerH!).toBeLessThan(
      0.4,
    );
  });
  it("a sticking shut-off keeps the pressure after the filter, a clogged filter takes it", () => {
    expect(
      withFault("shutOffSticking", 200).afterFilterKPaGauge! / before.afterFilterKPaGauge!,
    ).toBeGreaterThan(1);
    expect(withFault("preFilterClogged", 30).afterFilterKPaGauge! / before.afterFilterKPaGauge!).toBeLessThan(
      0.8,
    );
  });
  it("a weak booster lowers what stands behind it; off altogether, it is the feed pressure alone", () => {
    expect(withFault("boosterWeak", 0.5).afterFilterKPaGauge).toBeLessThan(before.afterFilterKPaGauge!);
    expect(withFault("boosterWeak", 0).afterFilterKPaGauge).toBeLessThan(360);
  });
  it("kinks: before the element all flows fall, towards the tank only the permeate, at the outlet only the tap", () => {
    expect(withFault("kinkedFeedLine").drainLPerH! / before.drainLPerH!).toBeLessThan(0.97);
    expect(withFault("kinkedPermeateLine").permeateLPerH! / before.permeateLPerH!).toBeLessThan(0.9);
    expect(withFault("kinkedPermeateLine").drainLPerH! / before.drainLPerH!).toBeCloseTo(1, 1);
    expect(withFault("kinkedOutletLine").deliveredLPerH! / before.deliveredLPerH!).toBeLessThan(0.6);
  });
  it("air in the housing: less flow at the same flux, so the rejection does not fall as with a fouled element", () => {
    const after = withFault("airLock", 0.5);
    expect(after.permeateLPerH! / before.permeateLPerH!).toBeLessThan(0.6);
    expect(after.permeateMgPerL! / before.permeateMgPerL!).toBeLessThan(1.05);
    expect(withFault("fouledMembrane", 0.5).permeateMgPerL! / before.permeateMgPerL!).toBeGreaterThan(1.5);
  });
  it("a remineraliser raises what is delivered and nothing in the tank", () => {
    const after = withFault("deliveredRaisedOnPurpose", 40);
    expect(after.deliveredMgPerL! - before.deliveredMgPerL!).toBeCloseTo(40, 9);
    expect(after.tankMgPerL).toBe(before.tankMgPerL);
  });
  it("meters: every reading of one meter by one factor, so that ratios stay", () => {
    const salty = withFault("tdsMeterOff", 1.4);
    expect(salty.permeateMgPerL! / salty.feedMgPerL!).toBeCloseTo(
      before.permeateMgPerL! / before.feedMgPerL!,
      12,
    );
    const gauge = withFault("gaugeOff", 0.8);
    expect(gauge.tankFullKPaGauge! / gauge.feedPressureKPaGauge!).toBeCloseTo(
      before.tankFullKPaGauge! / before.feedPressureKPaGauge!,
      12,
    );
  });
  it("using more than the unit makes shows in nothing but the use", () => {
    expect(withFault("demandAboveCapacity", 3).usedOverMade! / before.usedOverMade!).toBeCloseTo(3, 9);
  });
});

const supply: PortId[] = ["feedPressureKPaGauge", "temperatureC", "feedMgPerL"];
const outside: PortId[] = ["chlorineAfterCarbonMgPerL", "hardnessAtElementMgPerLCaCO3"];
const rest: PortId[] = ["drainTankFullLPerH", "drainFeedClosedLPerH", "tankFallKPaPerH", "waterAtAirValve"];
const flowsAndPressure: PortId[] = [
  "afterFilterKPaGauge",
  "permeateLPerH",
  "drainLPerH",
  "drainLineOffLPerH",
];
const membrane: PortId[] = [...flowsAndPressure, "permeateMgPerL", "firstWaterMgPerL"];
const tankAtRest: PortId[] = ["tankFullKPaGauge", "airChargeKPaGauge", "drawOffL"];
const tankWater: PortId[] = ["fillHours", "tankMgPerL", "deliveredMgPerL"];
const everything = [...new Set([...(Object.keys(before) as PortId[])])];
const allBut = (...changed: PortId[]) => everything.filter((port) => !changed.includes(port));
const elementFault = [
  ...supply,
  ...outside,
  ...rest,
  "airChargeKPaGauge",
  "tankFullKPaGauge",
  "deliveredLPerH",
] as PortId[];
const drainFault = [...supply, ...outside, ...rest, "airChargeKPaGauge"] as PortId[];

/** What must stay as it was: a fault reaches downstream and, through pressure, to the unit's own flows; never past what parts them. */
const spared: Readonly<Record<FaultId, readonly PortId[]>> = {
  fouledMembrane: elementFault,
  scaledMembrane: elementFault,
  oxidisedMembrane: elementFault,
  sealLeak: [...elementFault, "drainLPerH"],
  brineSeal: elementFault,
  airLock: elementFault,
  restrictorBlocked: drainFault,
  drainLineBlocked: [...drainFault, "drainLineOffLPerH"],
  restrictorTooBig: drainFault,
  preFilterClogged: drainFault,
  kinkedFeedLine: drainFault,
  boosterWeak: drainFault,
  shutOffSticking: [...supply, ...outside, ...rest, ...tankAtRest, "deliveredLPerH"],
  kinkedPermeateLine: [...elementFault, "drawOffL"],
  lowFeedPressure: [...outside, ...rest, "temperatureC", "feedMgPerL", "airChargeKPaGauge"],
  coldWater: [...outside, ...rest, "feedPressureKPaGauge", "feedMgPerL", "drainLPerH", ...tankAtRest],
  feedSolidsChanged: [
    ...outside,
    ...rest,
    "feedPressureKPaGauge",
    "temperatureC",
    "drainLPerH",
    ...tankAtRest,
  ],
  airChargeLow: [...supply, ...outside, ...rest, ...membrane, "tankFullKPaGauge", "deliveredLPerH"],
  airChargeHigh: [...supply, ...outside, ...rest, ...membrane, "tankFullKPaGauge", "deliveredLPerH"],
  diaphragmRuptured: allBut("drawOffL", "fillHours", "waterAtAirValve"),
  tankValveClosed: [...supply, ...outside, ...membrane],
  checkValveFailed: allBut("drainTankFullLPerH", "drainFeedClosedLPerH", "tankFallKPaPerH"),
  shutOffStuckOpen: [...supply, ...outside, ...membrane, "drainFeedClosedLPerH", "airChargeKPaGauge"],
  // What is mixed in also fills the tank sooner.
  bypassOpen: allBut("tankMgPerL", "deliveredMgPerL", "fillHours", "usedOverMade"),
  tubingReversed: [...supply, ...outside, ...rest, ...tankAtRest, "afterFilterKPaGauge"],
  postFilterClogged: allBut("deliveredLPerH"),
  kinkedOutletLine: allBut("deliveredLPerH"),
  carbonExhausted: allBut("chlorineAfterCarbonMgPerL"),
  softenerFailed: allBut("hardnessAtElementMgPerLCaCO3"),
  deliveredRaisedOnPurpose: allBut("deliveredMgPerL"),
  demandAboveCapacity: allBut("usedOverMade"),
  tdsMeterOff: allBut("feedMgPerL", "permeateMgPerL", "firstWaterMgPerL", "tankMgPerL", "deliveredMgPerL"),
  gaugeOff: allBut("feedPressureKPaGauge", "afterFilterKPaGauge", "tankFullKPaGauge", "tankFallKPaPerH"),
  sampleAfterStandby: allBut("firstWaterMgPerL"),
};

describe("and no other (which part parts which: common practice)", () => {
  it.each(ids)("%s", (id) => {
    for (const size of [faults[id].low, middle(id), faults[id].high]) {
      const after = withFault(id, size);
      for (const port of spared[id]) {
        const scale = Math.max(Math.abs(before[port]!), 1e-9);
        expect(Math.abs(after[port]! - before[port]!) / scale, port).toBeLessThan(0.035);
      }
    }
  });
  it("the tank's water is not spared by what reaches it", () => {
    for (const id of ["fouledMembrane", "preFilterClogged", "restrictorBlocked"] as const)
      for (const port of tankWater) expect(withFault(id)[port]).not.toBe(before[port]);
  });
});

describe("sizes", () => {
  it.each(ids)("%s has an answer at both ends of its range", (id) => {
    for (const size of [faults[id].low, faults[id].high])
      for (const value of Object.values(withFault(id, size))) expect(Number.isFinite(value)).toBe(true);
  });
});
