import { describe, expect, it } from "vitest";
import { assess } from "./assess.ts";
import type { Assessment, Figures, Finding } from "./assessment.ts";
import { context, visitOf } from "./testing/build.ts";
import { drainAllNight, ordinaryVisit, tasteComplaint } from "./testing/trials.ts";

/** Expected numbers: computed with an independent model of unit, tank and filter; readings rounded as a technician reads. */
const figure = (assessment: Assessment, name: keyof Figures, phase: "asFound" | "asLeft" = "asFound") => {
  const outcome = assessment.figures[phase][name];
  if (outcome.kind !== "known" || !("value" in outcome.value))
    throw new Error(`${name}: ${JSON.stringify(outcome)}`);
  return outcome.value;
};
const finding = (assessment: Assessment, id: string, phase = "asFound"): Finding | undefined =>
  assessment.findings.find((one) => one.id === id && one.phase === phase);
const tasks = (assessment: Assessment) => assessment.tasks.map((one) => one.id);

/** The trial's number lies inside the figure's expanded uncertainty. */
const expectInside = ({ value, u }: { readonly value: number; readonly u: number }, trial: number) =>
  expect(Math.abs(value - trial)).toBeLessThanOrEqual(Math.max(2 * u, 0.0051 * Math.abs(trial)));

describe("the ordinary annual visit", () => {
  const judged = assess(ordinaryVisit(), "today", context);

  it("finds reduction 95.0 %, flow 0.92–0.93 and salt 1.14 of new, so the element stays", () => {
    expect(figure(judged, "percentReduction").value).toBeCloseTo(95.0, 1);
    expect(figure(judged, "flowRatio").value).toBeGreaterThan(0.915);
    expect(figure(judged, "flowRatio").value).toBeLessThan(0.935);
    expect(Math.abs(figure(judged, "saltRatio").value - 1.14)).toBeLessThan(0.1);
    expect(finding(judged, "membraneFlow")?.verdict).toBe("within");
    expect(finding(judged, "saltPassage")?.verdict).toBe("tooClose");
    expect(tasks(judged)).not.toContain("replace:element");
  });

  it("finds the charge 3.7 psi, outside; 18 psi would make 11 L into 19 L", () => {
    expect(Math.abs(figure(judged, "airCharge").value - 3.7)).toBeLessThan(0.1);
    expect(figure(judged, "bestCharge").value).toBeCloseTo(18, 3);
    expect(figure(judged, "usableLitres").value.toFixed(0)).toBe("11");
    expect(figure(judged, "usableLitresAtBest").value.toFixed(0)).toBe("19");
    expect(finding(judged, "airCharge")).toMatchObject({ verdict: "outside", action: "setAirCharge" });
    expect(finding(judged, "airCharge", "asLeft")?.verdict).toBe("within");
  });

  it("finds the pre-filter drop 9.4 psi, outside, and gone as left", () => {
    expect(figure(judged, "filterDrop").value).toBeCloseTo(9.4, 6);
    expect(finding(judged, "filterDrop")?.verdict).toBe("outside");
    expect(tasks(judged)).toEqual(["replace:sediment", "setAirCharge"]);
    expect(figure(judged, "filterDrop", "asLeft").value).toBeCloseTo(1.6, 6);
  });

  it("ignoring the gauge after the filters would have said 0.80", () => {
    const file = ordinaryVisit();
    const visits = file.visits.map((visit) => {
      const { afterFilterPressure: _, ...asFound } = visit.readings.asFound;
      return { ...visit, readings: { ...visit.readings, asFound } };
    });
    expect(figure(assess({ ...file, visits }, "today", context), "flowRatio").value).toBeCloseTo(0.8, 1);
  });

  it("expects the drain, permeate and TDS of the repaired unit within today's intervals", () => {
    if (judged.expected.kind !== "known") throw new Error("no expectation");
    const { permeateFlow, drainFlow, permeateTds, afterFilterPressure } = judged.expected.value;
    expect([permeateFlow!.low < 0.37, permeateFlow!.high > 0.37]).toEqual([true, true]);
    expect([drainFlow!.low < 1, drainFlow!.high > 1]).toEqual([true, true]);
    expect([permeateTds!.low < 13, permeateTds!.high > 13]).toEqual([true, true]);
    expect([afterFilterPressure!.low < 59.4, afterFilterPressure!.high > 59.4]).toEqual([true, true]);
    expect(afterFilterPressure!.low).toBeGreaterThan(51.6);
  });

  it("expects 1.8 h of filling once the air is set", () =>
    expectInside(figure(judged, "fillingHours", "asLeft"), 1.8));

  it("asks nothing when the meter's scale is recorded, and about the scale when it is not", () => {
    expect(judged.questions).toEqual([]);
    const slip = assess(ordinaryVisit("NaCl"), "today", context);
    expect(slip.questions.map((one) => one.id)).toEqual(["meterOnAnotherScale"]);
    expect(slip.questions[0]?.detail).toMatchObject({ percent: 41 });
  });

  it("asks for no more than 14 typed numbers", () => {
    const file = ordinaryVisit();
    const today = file.visits.at(-1)!;
    const empty = {
      ...today,
      readings: { asFound: {}, asLeft: {} },
      work: { setAirCharge: { state: "done" } as const },
    };
    const { toRead } = assess({ ...file, visits: [...file.visits.slice(0, -1), empty] }, "today", context);
    const typed = toRead.filter(({ slot }) => slot !== "permeateFlow" && slot !== "drainFlow");
    expect(typed.length).toBeLessThanOrEqual(14);
  });
});

describe("limits beside dissolved solids", () => {
  const withLimits = (limits: readonly Record<string, unknown>[], more = {}) => {
    const file = ordinaryVisit();
    const today = file.visits.at(-1)!;
    const asFound = {
      ...today.readings.asFound,
      ...visitOf("x", "annual", "2026-11-25", more).readings.asFound,
    };
    const visits = [...file.visits.slice(0, -1), { ...today, readings: { ...today.readings, asFound } }];
    const kept = limits.map((limit, i) => ({ id: `l${i}`, appliance: "oven", source: "label", ...limit }));
    const appliances = [{ ...file.appliances[0]!, limits: kept as never }];
    return assess({ ...file, visits, appliances }, "today", context);
  };

  it("judges hardness, silica and pH as read", () => {
    const judged = withLimits(
      [
        { quantity: "hardness", high: 3, unit: "°dH" },
        { quantity: "silica", high: 5, unit: "mg/L" },
        { quantity: "pH", low: 6.5, high: 8.5, unit: "" },
      ],
      { deliveredHardness: [4, "gpg"], deliveredSilica: [2, "mg/L"], deliveredPh: [7.4, "pH"] },
    );
    expect(finding(judged, "delivered:hardness")?.figure?.value).toBeCloseTo(3.84, 2);
    expect(finding(judged, "delivered:silica")?.verdict).toBe("within");
    expect(finding(judged, "delivered:pH")?.verdict).toBe("within");
  });

  it("calls chloride within when so little conducts that there is no room for it, and cannot tell when there is", () => {
    const judged = withLimits([{ quantity: "chloride", high: 30, unit: "mg/L" }]);
    expect(finding(judged, "delivered:chloride")).toMatchObject({
      verdict: "within",
      rule: "at-most-by-conductivity",
    });
    const strict = withLimits([{ quantity: "chloride", high: 2, unit: "mg/L" }]);
    expect(finding(strict, "delivered:chloride")).toMatchObject({
      verdict: "cannotTell",
      missing: ["deliveredChloride"],
    });
  });

  it("leaves a doubtful reading out, and says so", () => {
    const judged = withLimits([], { permeateTds: [15, "ppm", { scale: "442", doubtful: true }] });
    expect(judged.figures.asFound.percentReduction.kind).toBe("missing");
    expect(finding(judged, "percentReduction")?.detail?.doubtful).toBe("permeateTds");
    expect(finding(judged, "doubtful")?.detail?.slots).toBe("permeateTds");
  });
});

describe("the taste complaint", () => {
  const judged = assess(tasteComplaint(), "today", context);

  it("finds the element oxidised: flow 1.32, salt ×4.2", () => {
    expectInside(figure(judged, "flowRatio"), 1.32);
    expectInside(figure(judged, "saltRatio"), 4.2);
    expect(finding(judged, "saltPassage")).toMatchObject({
      verdict: "outside",
      detail: { pattern: "oxidised" },
    });
    expect(figure(judged, "percentReduction").value).toBeCloseTo(86.8, 0);
  });

  it("finds chlorine after the carbon first, the carbon at 2.1 × its litres", () => {
    expect(judged.findings[0]).toMatchObject({ id: "chlorineAfterCarbon", verdict: "outside" });
    expect(finding(judged, "carbonLeft")?.detail?.usedShare).toBeCloseTo(2.1, 2);
    expect(finding(judged, "carbonLeft")?.figure).toMatchObject({ unit: "× its rated litres" });
  });

  it("cannot tell what carbon has left that is rated at no chlorine at all", () => {
    const file = tasteComplaint();
    const parts = file.parts.map((part) =>
      part.role === "carbon" ? { ...part, ratedChlorineMgPerL: 0 } : part,
    );
    expect(finding(assess({ ...file, parts }, "today", context), "carbonLeft")).toMatchObject({
      verdict: "cannotTell",
      missing: ["part.ratedChlorine"],
    });
  });

  it("has the carbon done before the element, and the water discarded", () => {
    expect(tasks(judged)).toEqual([
      "replace:carbon",
      "rinseCarbon",
      "sanitise",
      "replace:element",
      "discardTank",
    ]);
  });
});

describe("the drain heard all night", () => {
  const judged = assess(drainAllNight(), "today", context);

  it("finds the check valve by the drain going on with the feed closed, at about what the element lets back", () => {
    const leak = finding(judged, "drainFeedClosed");
    expect(leak).toMatchObject({ verdict: "outside", action: "replace:checkValve" });
    expect(leak?.figure?.value).toBeCloseTo(0.158, 3);
    const through = Number(leak?.detail?.elementPasses);
    expect(Math.abs(through / 0.158 - 1)).toBeLessThan(0.15);
    expect(tasks(judged)).toContain("replace:checkValve");
    expect(tasks(judged)).not.toContain("replace:shutOff");
  });

  it("finds the element sound: flow 0.96, salt 1.06", () => {
    expectInside(figure(judged, "flowRatio"), 0.96);
    expectInside(figure(judged, "saltRatio"), 1.06);
    expect(tasks(judged)).not.toContain("replace:element");
  });

  it("finds the delivered water too far above the membrane's, and the carbon due by litres", () => {
    expect(finding(judged, "deliveredOverMembrane")?.verdict).toBe("outside");
    expect(tasks(judged)).toContain("findBackflow");
    expect(judged.due.find((one) => one.role === "carbon")).toMatchObject({ overdue: true });
  });
});
