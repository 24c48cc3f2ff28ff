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

describe("a restrictor nobody named", () => {
  const drain = (unit: Parameters<typeof judge>[0]) =>
    judge(unit, asThePlate(1)).assumed.find((one) => one.id === "usualDrain");
  const { ratedRejectLPerH: _, ...bare } = N1;
  // 15 % of the feed becomes permeate (common practice, no source): the rest of it is 85/15 of the permeate.
  it("is assumed to keep the recovery of one element, and the record says so", () => {
    expect(drain(bare)).toMatchObject({ origin: "house", unit: "L/h" });
    expect(drain(bare)!.value).toBeCloseTo((N1.ratedPermeateLPerH! * 85) / 15, 6);
    expect(drain({ ...bare, twoElements: true })!.value).toBeCloseTo(
      (2 * N1.ratedPermeateLPerH! * 85) / 15,
      6,
    );
    expect(drain({ ...N1, twoElements: true })!.value).toBeCloseTo(2 * N1.ratedRejectLPerH!, 6);
  });
  it("is not assumed where the label or the restrictor itself says it", () => {
    expect(drain(N1)).toBeUndefined();
    expect(drain({ ...bare, restrictorLPerH: 60, restrictorAtKPaGauge: 414 })).toBeUndefined();
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

describe("a booster behind the filters", () => {
  // A curve all but flat: 200 kPa at no flow, 0.02 kPa less at the plate's own flow.
  const pumped = { ...N1, boosterShutOffRiseKPa: 200, boosterOpenFlowLPerH: 10_000 };
  const plate = asThePlate(1);
  const lower = (kPa: number): TypedReadings => ({
    ...plate,
    beforeFilterPressure: [N1.testPressureKPaGauge! + 7 - kPa, "kPa"],
    afterFilterPressure: [N1.testPressureKPaGauge! - kPa, "kPa"],
  });
  const flowRatio = (unit: typeof pumped, readings: TypedReadings) =>
    figure(judge(unit, readings).figures.asFound.flowRatio);
  const filled = (judged: ReturnType<typeof judge>) => figure(judged.figures.asFound.fillingHours);

  it("that adds 200 kPa makes what the plate says from 200 kPa less feed", () => {
    expect(flowRatio(pumped, lower(200))).toBeCloseTo(1, 3);
    expect(flowRatio({ ...N1, boosterShutOffRiseKPa: 200 } as typeof pumped, lower(200))).toBeGreaterThan(
      1.5,
    );
  });
  it("whose switch keeps it off adds nothing", () => {
    const off = { ...pumped, boosterOffBelowKPaGauge: 150 };
    expect(flowRatio(off, lower(200))).toBeCloseTo(1, 3);
    expect(flowRatio({ ...off, boosterOffBelowKPaGauge: 300 }, plate)).toBeGreaterThan(0.6);
    expect(flowRatio({ ...off, boosterOffBelowKPaGauge: 600 }, plate)).toBeCloseTo(1, 3);
  });
  it("fills the tank to its share of the pressure behind the pump, in the hours of that much more feed", () => {
    const tank = { tankL: 53, airCharge: [10, "psi"] } as const;
    const unit = (one: object) => ({ ...one, tankL: tank.tankL }) as typeof pumped;
    const readings = (kPa: number): TypedReadings => ({ ...lower(kPa), airCharge: tank.airCharge });
    const [with200, without] = [judge(unit(pumped), readings(200)), judge(unit(N1), readings(0))];
    expect(filled(with200)).toBeCloseTo(filled(without), 2);
    const full = (one: ReturnType<typeof judge>) => figure(one.figures.asFound.shutOffPressure);
    expect(full(with200)).toBeCloseTo(full(without), 1);
  });
  it("is expected at every port as that much more feed pressure would be; the filters' gauge stands before it", () => {
    const [with200, without] = [judge(pumped, lower(200)), judge(N1, plate)].map(({ expected }) => {
      if (expected.kind !== "known") throw new Error(expected.kind);
      return expected.value;
    });
    for (const port of ["permeateFlow", "drainFlow", "permeateTds"] as const)
      expect(with200![port]!.value / without![port]!.value).toBeCloseTo(1, 2);
    const kPaLess = converted(
      without!.afterFilterPressure!.value - with200!.afterFilterPressure!.value,
      "psi",
      "kPa",
    );
    expect(kPaLess).toBeCloseTo(200, 0);
  });
  it("is named among what is taken for granted", () => {
    const ids = judge(pumped, plate).assumed.map((one) => one.id);
    expect(ids).toEqual(expect.arrayContaining(["boosterRise", "boosterOpenFlow", "boosterCurve"]));
    expect(judge(N1, plate).assumed.map((one) => one.id)).not.toContain("boosterRise");
  });
});

describe("a permeate pump before the tank", () => {
  const bare = { ...N1, tankL: 53 };
  const pumped = { ...bare, permeatePump: true };
  const feedKPa = N1.testPressureKPaGauge! + 7;
  const day: TypedReadings = { ...asThePlate(1), airCharge: [10, "psi"], staticPressure: [feedKPa, "kPa"] };
  /** As told, its shut-off's ratio nobody's unless said here. */
  const judge = (
    unit: Parameters<typeof fileOf>[1],
    readings: TypedReadings,
    settings: Partial<typeof context.settings> = {},
  ) => {
    const file = fileOf(
      "Mill Hollow infants",
      unit,
      [],
      [visitOf("today", "annual", "2026-11-25", readings)],
    );
    const { shutOffRatio: _, ...unsaid } = file.unit;
    const said = unit.shutOffRatio !== undefined;
    return assess({ ...file, unit: said ? file.unit : unsaid }, "today", {
      ...context,
      settings: { ...context.settings, ...settings },
    });
  };
  const withTank = (kPa: number): TypedReadings => ({ ...day, tankFullPressure: [kPa, "kPa"] });
  const band = (unit: Parameters<typeof judge>[0], readings = day) => {
    const { expected } = judge(unit, readings);
    if (expected.kind !== "known") throw new Error(expected.kind);
    return expected.value;
  };
  it("lets the tank fill to nearly the feed's own pressure: no reading of a fault", () => {
    const psi = converted(0.93 * feedKPa, "kPa", "psi");
    expect(band(bare).tankFullPressure!.high).toBeLessThan(psi);
    expect(band(pumped).tankFullPressure!.high).toBeGreaterThan(psi);
    expect(band(pumped).tankFullPressure!.low).toBeLessThan(converted(0.64 * feedKPa, "kPa", "psi"));
  });
  it("where the record says when its shut-off closes, the band is as narrow as without it", () => {
    const said = { shutOffRatio: 0.9 };
    const width = ({ low, high }: { low: number; high: number }) => high - low;
    const [narrow, wide] = [band({ ...pumped, ...said }), band(pumped)].map((one) => one.tankFullPressure!);
    expect(width(narrow!)).toBeLessThan(0.4 * width(wide!));
    expect(narrow!.value).toBeCloseTo(band({ ...bare, ...said }).tankFullPressure!.value, 6);
  });
  it("the company's usual ratio is that of units without it", () => {
    const { assumed } = judge(pumped, day, { shutOffRatio: 0.62 });
    expect(assumed.find((one) => one.id === "shutOffRatio")).toMatchObject({ value: 0.8, origin: "house" });
    expect(assumed.map((one) => one.id)).toEqual(
      expect.arrayContaining(["shutOffRatioU", "pumpStrokeRatio", "pumpInlet", "pumpLoss", "pumpSlip"]),
    );
    expect(judge(bare, day).assumed.map((one) => one.id)).not.toContain("pumpInlet");
  });
  it("fills to the same pressure in less time, and says it knows that less well", () => {
    const hours = (unit: Parameters<typeof judge>[0]) => {
      const one = judge({ ...unit, shutOffRatio: 0.65 }, day).figures.asFound.fillingHours;
      if (one.kind !== "known") throw new Error(one.kind);
      return one.value;
    };
    expect(hours(pumped).value).toBeLessThan(0.9 * hours(bare).value);
    expect(hours(pumped).u / hours(pumped).value).toBeGreaterThan(hours(bare).u / hours(bare).value);
  });
  it("holds purer water: the element made it all against next to no pressure", () => {
    const said = { shutOffRatio: 0.8 };
    const delivered = (unit: object) => band({ ...unit, ...said } as typeof pumped).deliveredTds!.value;
    expect(delivered(pumped)).toBeLessThan(0.9 * delivered(bare));
    expect(band(pumped).permeateTds).toEqual(band(bare).permeateTds);
    expect(band(pumped).permeateFlow).toEqual(band(bare).permeateFlow);
  });
  it("a tank far above the feed is asked about without it; with it only what no such pump lifts to", () => {
    const asked = (unit: Parameters<typeof judge>[0], times: number) =>
      judge(unit, withTank(times * feedKPa)).questions.some(({ id }) => id === "tankAboveFeedPressure");
    expect([asked(bare, 1.5), asked(pumped, 1.5), asked(pumped, 4)]).toEqual([true, false, true]);
  });
  it("with a vented tank there is nothing for it to lift against", () => {
    const vented = { ...bare, ventedTank: true };
    const { figures } = judge({ ...vented, permeatePump: true }, day);
    expect(figures).toEqual(judge(vented, day).figures);
  });
});

describe("how two elements lie", () => {
  const two = (elementArrangement?: "parallel" | "series"): Parameters<typeof judge>[0] => ({
    ...N1,
    twoElements: true,
    ...(elementArrangement && { elementArrangement }),
  });
  const twoNumbers: TypedReadings = {
    beforeFilterPressure: [N1.testPressureKPaGauge!, "kPa"],
    feedTemperature: [N1.testTemperatureC!, "°C"],
    feedTds: ppm(N1.testFeedMgPerL!),
  };
  const expected = (unit: Parameters<typeof judge>[0]) => {
    const one = judge(unit, twoNumbers).expected;
    if (one.kind !== "known") throw new Error(one.kind);
    return one.value;
  };
  // Drain ∝ √p through an orifice: clean filters take 2 to 8 % of the pressure here, 1 to 4 % of the flow.
  it("one behind the other they share the drain flow of one label, side by side each has its own", () => {
    const plateLPerMin = N1.ratedRejectLPerH! / 60;
    const [series, parallel] = [expected(two("series")), expected(two("parallel"))];
    expect(series.drainFlow!.value / plateLPerMin).toBeGreaterThan(0.94);
    expect(series.drainFlow!.value / plateLPerMin).toBeLessThan(1);
    expect(parallel.drainFlow!.value / (2 * plateLPerMin)).toBeGreaterThan(0.92);
    expect(parallel.drainFlow!.value / (2 * plateLPerMin)).toBeLessThan(1);
    // Half the drain, nearly the same permeate: the feed concentrates more, so the permeate is saltier.
    expect(series.permeateTds!.value).toBeGreaterThan(1.05 * parallel.permeateTds!.value);
  });
  it("not said is as side by side; of one element it changes nothing", () => {
    expect(expected(two())).toEqual(expected(two("parallel")));
    expect(expected({ ...N1, elementArrangement: "series" })).toEqual(expected(N1));
  });
  it("a drain half or twice what the arrangement lets by is asked about", () => {
    const asked = (unit: Parameters<typeof judge>[0], elements: number) =>
      judge(unit, { ...asThePlate(2), drainFlow: timed(elements * N1.ratedRejectLPerH!) }).questions.filter(
        ({ id }) => id === "drainAgainstRestrictor",
      ).length;
    expect([asked(two("series"), 1), asked(two("parallel"), 2), asked(two(), 1), asked(two(), 2)]).toEqual([
      0, 0, 0, 0,
    ]);
    expect([asked(two("series"), 2.1), asked(two("parallel"), 0.95), asked(two(), 2.1)]).toEqual([1, 1, 0]);
  });
});

describe("a blend valve whose share is known", () => {
  const tank = { tankL: 53 };
  const blended = { ...N1, ...tank, blendValve: true, blendPercent: 10 };
  const readings: TypedReadings = { ...asThePlate(1), airCharge: [10, "psi"] };
  const expected = (unit: Parameters<typeof judge>[0]) => {
    const one = judge(unit, readings).expected;
    if (one.kind !== "known") throw new Error(one.kind);
    return one.value;
  };
  // By hand: of ten litres one is feed; it comes beside the permeate, which fills as without it.
  it("mixes nine parts of what the tank would hold with one of feed", () => {
    const [mixed, plain] = [expected(blended).deliveredTds!, expected({ ...N1, ...tank }).deliveredTds!];
    expect(mixed.value).toBeCloseTo(0.9 * plain.value + 0.1 * N1.testFeedMgPerL!, 6);
    expect(mixed.high - mixed.low).toBeGreaterThan(plain.high - plain.low);
  });
  it("fills the tank in nine tenths of the hours", () => {
    const hours = (unit: Parameters<typeof judge>[0]) =>
      figure(judge(unit, readings).figures.asFound.fillingHours);
    expect(hours(blended) / hours({ ...N1, ...tank })).toBeCloseTo(0.9, 6);
  });
  it("is named among what is taken for granted; a share nobody knows still expects nothing delivered", () => {
    const ids = judge(blended, readings).assumed.map((one) => one.id);
    expect(ids).toEqual(expect.arrayContaining(["blendShare", "blendWanders"]));
    const { blendPercent: _, ...unknown } = blended;
    expect(expected(unknown).deliveredTds).toBeUndefined();
    expect(expected({ ...N1, ...tank, blendPercent: 10 })).toEqual(expected({ ...N1, ...tank }));
  });
});
