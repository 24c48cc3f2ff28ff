import { describe, expect, it } from "vitest";
import { restrictorLPerH } from "./restrictor.ts";
import { type RestrictorFound, restrictorAsFound } from "./restrictor-as-found.ts";
import { restrictorAsRead } from "./restrictor-as-read.ts";

const psi = 6.894757;
const known = (found: RestrictorFound) => {
  const outcome = restrictorAsFound(found);
  if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
  return outcome.value;
};
const mLPerMin = (found: RestrictorFound, kPa: number, temperatureC: number) =>
  restrictorLPerH(known(found), kPa, temperatureC) / 0.06;

// Hagen–Poiseuille, the sharp orifice of the Encyclopaedia Britannica (11th ed., "Hydraulics" §17–18) and IAPWS viscosity, computed apart.
describe("a restrictor by what is written on it or measured of it", () => {
  it("capillary 0.30 mm × 0.5 m: 9.527 mL/min at 400 kPa and 20 °C, 0.6815 of its 25 °C flow at 10 °C", () => {
    const found = { restrictorKind: "capillary", restrictorBoreMm: 0.3, restrictorLengthM: 0.5 } as const;
    expect(Math.abs(mLPerMin(found, 400, 20) / 9.527 - 1)).toBeLessThan(0.005);
    expect(mLPerMin(found, 400, 10) / mLPerMin(found, 400, 25)).toBeCloseTo(0.6815, 3);
  });
  it("capillary 0.60 mm × 0.3 m at 60 psi: about 105 mL/min (±20 %), not the 262.8 of the laminar law", () => {
    const found = { restrictorKind: "capillary", restrictorBoreMm: 0.6, restrictorLengthM: 0.3 } as const;
    expect(Math.abs(mLPerMin(found, 60 * psi, 20) / 105 - 1)).toBeLessThan(0.2);
  });
  it("orifice 0.80 mm: 538 mL/min at 60 psi; colder water hardly matters (0.9987 at 10 °C of 25 °C)", () => {
    const found = { restrictorKind: "orifice", restrictorBoreMm: 0.8 } as const;
    expect(Math.abs(mLPerMin(found, 60 * psi, 20) / 538 - 1)).toBeLessThan(0.01);
    expect(mLPerMin(found, 400, 10) / mLPerMin(found, 400, 25)).toBeCloseTo(0.9987, 3);
  });
  it("measured: passes what was measured there, and by its law elsewhere", () => {
    const point = { restrictorKind: "measured", restrictorLPerH: 60, restrictorAtKPaGauge: 400 } as const;
    const hole = known({ ...point, restrictorLaw: "orifice" });
    const tube = known({ ...point, restrictorLaw: "laminar", restrictorAtC: 25 });
    expect([restrictorLPerH(hole, 400, 5), restrictorLPerH(hole, 100, 25)]).toEqual([60, 30]);
    expect(restrictorLPerH(tube, 200, 25)).toBeCloseTo(30, 9);
    expect(restrictorLPerH(tube, 400, 10) / 60).toBeCloseTo(0.6815, 3);
  });
  it("two numbers without a kind are a rating, as they always were", () => {
    const two = { restrictorLPerH: 60, restrictorAtKPaGauge: 414 };
    expect(known(two)).toEqual({ kind: "rated", ratedLPerH: 60, ratedKPa: 414 });
    expect(known({ ...two, restrictorKind: "rated" })).toEqual(known(two));
  });
});

describe("what is missing or cannot be is named", () => {
  it.each<[RestrictorFound, readonly string[]]>([
    [{}, ["unit.restrictorLPerH", "unit.restrictorAtKPaGauge"]],
    [{ restrictorKind: "capillary", restrictorBoreMm: 0.3 }, ["unit.restrictorLengthM"]],
    [
      { restrictorKind: "orifice", restrictorLPerH: 60, restrictorAtKPaGauge: 414 },
      ["unit.restrictorBoreMm"],
    ],
    [{ restrictorKind: "measured", restrictorLPerH: 60, restrictorAtKPaGauge: 414 }, ["unit.restrictorLaw"]],
    [
      { restrictorKind: "measured", restrictorLaw: "laminar", restrictorLPerH: 6, restrictorAtKPaGauge: 414 },
      ["unit.restrictorAtC"],
    ],
    [{ restrictorKind: "sponge" as "rated" }, ["unit.restrictorKind"]],
  ])("%j", (found, missing) => {
    expect(restrictorAsFound(found)).toEqual({ kind: "missing", missing });
  });
  it("a bore of 0.3 m instead of mm is refused with its range", () => {
    const found = { restrictorKind: "orifice", restrictorBoreMm: 300 } as const;
    expect(restrictorAsFound(found)).toMatchObject({
      kind: "refused",
      code: "out-of-range",
      detail: { name: "restrictorBoreMm", high: 3 },
    });
  });
});

describe("as a reading shows it", () => {
  const read = { drainLPerH: 0.6, pressureKPaGauge: 400, temperatureC: 25 };
  it.each<RestrictorFound>([
    {},
    { restrictorLPerH: 60, restrictorAtKPaGauge: 414 },
    { restrictorKind: "capillary", restrictorBoreMm: 0.3, restrictorLengthM: 0.5 },
    { restrictorKind: "capillary", restrictorBoreMm: 0.6, restrictorLengthM: 0.3 },
    { restrictorKind: "orifice", restrictorBoreMm: 0.8 },
    {
      restrictorKind: "measured",
      restrictorLaw: "laminar",
      restrictorLPerH: 1,
      restrictorAtKPaGauge: 300,
      restrictorAtC: 15,
    },
  ])("it passes what was read, and colder as its kind does: %j", (found) => {
    const seen = restrictorAsRead(restrictorAsFound(found), read);
    expect(restrictorLPerH(seen, 400, 25)).toBeCloseTo(0.6, 12);
    const share = restrictorLPerH(seen, 400, 10) / 0.6;
    if (found.restrictorLengthM === 0.5 || found.restrictorLaw) expect(share).toBeCloseTo(0.6815, 3);
    else expect(share).toBeGreaterThan(0.9);
  });
  it("without a kind it is the reading itself", () => {
    const rated = restrictorAsFound({ restrictorLPerH: 60, restrictorAtKPaGauge: 414 });
    expect(restrictorAsRead(rated, read)).toEqual({ kind: "rated", ratedLPerH: 0.6, ratedKPa: 400 });
  });
  it("a drain line takes its part of the pressure first: 5.11 psi in 10 ft of 0.170 in at 1.5 L/min (±3 %)", () => {
    const line = {
      ...read,
      drainLPerH: 90,
      temperatureC: 20,
      drainTubes: [{ boreMm: 4.318, lengthM: 3.048 }],
    };
    const seen = restrictorAsRead(restrictorAsFound({}), line);
    if (seen.kind !== "rated") throw new Error(seen.kind);
    expect(Math.abs((400 - seen.ratedKPa) / psi / 5.11 - 1)).toBeLessThan(0.03);
  });
});
