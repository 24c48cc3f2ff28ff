import { restrictorLPerH } from "@tapside/reverse-osmosis";
import { expect, it } from "vitest";
import { cup, fileOf, N1, ppm, visitOf } from "../../assessment/src/testing/build.ts";
import { unitOfFile } from "./unit-of-file.ts";

const today = visitOf("today", "annual", "2026-11-25", {});
const unitOf = (more: object, ...before: Parameters<typeof fileOf>[3]) => {
  const outcome = unitOfFile(
    fileOf("Mill Hollow infants", { ...N1, ...more }, [], [...before, today]),
    today,
    "asFound",
  );
  if (outcome.kind !== "known") throw new Error(outcome.kind);
  return outcome.value.unit;
};
const capillary = { restrictorKind: "capillary", restrictorBoreMm: 0.3, restrictorLengthM: 0.5 } as const;

it("a restrictor whose kind was found takes the place of the label's drain", () => {
  // 9.527 mL/min at 400 kPa and 20 °C by Hagen–Poiseuille, computed apart.
  expect(Math.abs(restrictorLPerH(unitOf(capillary).restrictor, 400, 20) / 0.06 / 9.527 - 1)).toBeLessThan(
    0.005,
  );
  expect(unitOf({}).restrictor).toEqual({
    kind: "rated",
    ratedLPerH: N1.ratedRejectLPerH,
    ratedKPa: N1.testPressureKPaGauge,
  });
});

it("at the hand-over's own readings it passes what was read, and slows in cold water as its kind does", () => {
  const handOver = visitOf("before", "commissioning", "2026-01-10", {
    feedTds: ppm(N1.testFeedMgPerL!),
    feedTemperature: [25, "°C"],
    afterFilterPressure: [400, "kPa"],
    permeateTds: ppm(N1.testFeedMgPerL! * (1 - N1.ratedRejectionPercent! / 100)),
    permeateFlow: cup(1, 3600 / N1.ratedPermeateLPerH!),
    drainFlow: cup(1, 3600 / 50),
  });
  const { restrictor } = unitOf(capillary, handOver);
  expect(restrictorLPerH(restrictor, 400, 25)).toBeCloseTo(50, 6);
  // Viscosity of water at 25 °C over that at 10 °C (IAPWS): 0.6815.
  expect(restrictorLPerH(restrictor, 400, 10) / 50).toBeCloseTo(0.6815, 3);
});

it("lines of the record are lines of the model; without them there are none", () => {
  expect(unitOf({ outletTubeLengthM: 3 }).outletTubes).toEqual([{ boreMm: 6.35, lengthM: 3 }]);
  expect(unitOf({})).not.toHaveProperty("outletTubes");
});
