import { converted } from "@tapside/quantities";
import { absentPorts } from "@tapside/records";
import { describe, expect, it } from "vitest";
import { assess } from "./assess.ts";
import { context, cup, fileOf, N1, ppm, type TypedReadings, visitOf } from "./testing/build.ts";

const judge = (unit: Parameters<typeof fileOf>[1], readings: TypedReadings) =>
  assess(
    fileOf("Mill Hollow infants", unit, [], [visitOf("today", "annual", "2026-11-25", readings)]),
    "today",
    context,
  );
const figure = (outcome: { kind: string; value?: { value: number } }) =>
  outcome.kind === "known" ? outcome.value!.value : Number.NaN;
const ML_PER_L = 1000;
const timed = (lPerH: number) => cup(1, 3600 / lPerH);

/** The readings of so many elements side by side, each as its nameplate says. */
const asThePlate = (elements: number): TypedReadings => ({
  feedTds: ppm(N1.testFeedMgPerL!),
  feedTemperature: [N1.testTemperatureC!, "°C"],
  beforeFilterPressure: [N1.testPressureKPaGauge! + 7, "kPa"],
  afterFilterPressure: [N1.testPressureKPaGauge!, "kPa"],
  permeateTds: ppm(N1.testFeedMgPerL! * (1 - N1.ratedRejectionPercent! / 100)),
  permeateFlow: timed(elements * N1.ratedPermeateLPerH!),
  drainFlow: timed(elements * N1.ratedRejectLPerH!),
});

describe("two elements", () => {
  const flowRatio = (twoElements: boolean, elements: number) =>
    figure(judge({ ...N1, twoElements }, asThePlate(elements)).figures.asFound.flowRatio);
  it("that do what the plate says of one, each, are as new; one alone would seem to give twice as much", () => {
    expect(flowRatio(true, 2)).toBeCloseTo(1, 3);
    expect(flowRatio(false, 2)).toBeCloseTo(2, 3);
    expect(flowRatio(true, 1)).toBeCloseTo(0.5, 3);
  });
});

describe("two tanks", () => {
  // Boyle's law by hand: gas at 10 psi fills both tanks, 106 L; the draw is what it gains from 40 to 25 psi.
  const gasL = (psi: number) => (106 * (10 + 14.696)) / (psi + 14.696);
  const drawnL = gasL(25) - gasL(40);
  const readings: TypedReadings = {
    tankFullPressure: [40, "psi"],
    tankAfterPressure: [25, "psi"],
    drawnVolume: [drawnL * ML_PER_L, "mL"],
  };
  it("give the charge of both by one bucket test", () => {
    const charge = judge({ ...N1, tankL: 53, twoTanks: true }, readings).figures.asFound.airCharge;
    expect(figure(charge)).toBeCloseTo(10, 2);
  });
});

describe("a vented tank", () => {
  const vented = { ...N1, tankL: 53, ventedTank: true };
  const judged = judge(vented, asThePlate(1));
  it("has no air to read and none to judge", () => {
    expect(absentPorts(vented)).toContain("tank");
    expect(judged.findings.map((one) => one.id)).not.toContain("airCharge");
    expect(judged.figures.asFound.airCharge).toMatchObject({ kind: "refused", code: "vented-tank" });
  });
  it("fills without back-pressure: its litres over the permeate flow", () => {
    const hours = figure(judged.figures.asFound.fillingHours);
    expect(hours).toBeCloseTo(53 / N1.ratedPermeateLPerH!, 2);
  });
  it("holds what the element makes: delivered as to waste, and no full pressure expected", () => {
    const { expected } = judged;
    if (expected.kind !== "known") throw new Error(expected.kind);
    expect(expected.value.tankFullPressure).toBeUndefined();
    expect(expected.value.deliveredTds!.value).toBeCloseTo(expected.value.permeateTds!.value, 6);
  });
  it("is not kept from judging because it was once charged", () => {
    const charge = converted(10, "psi", "kPa");
    const again = judge(vented, { ...asThePlate(1), airCharge: [charge, "kPa"] });
    expect(again.findings.map((one) => one.id)).not.toContain("airCharge");
  });
});
