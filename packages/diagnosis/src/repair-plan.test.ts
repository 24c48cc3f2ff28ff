import { expect, it } from "vitest";
import { CAUSE_IDS, type CauseId } from "./causes.ts";
import { measuredAgain, mustMeasureAgain } from "./measured-again.ts";
import { repairPlan } from "./repair-plan.ts";
import { REPAIRS } from "./repairs.ts";
import { saidToOwner } from "./said-to-owner.ts";

const oddsWith = (likely: Readonly<Partial<Record<CauseId, number>>>) => ({
  causes: CAUSE_IDS.map((cause) => ({ cause, probability: likely[cause] ?? 0.001 })).sort(
    (a, b) => b.probability - a.probability,
  ),
  two: 0.5,
  pairs: [],
});

/** Trade facts, common practice, no source: chlorine ruins a new element, hardness scales it. */
it("carbon comes before a new element, hardness before a new element", () => {
  const oxidised = repairPlan(oddsWith({ oxidisedMembrane: 0.97, carbonExhausted: 0.6 }));
  expect(oxidised.steps.map(({ cause }) => cause)).toEqual(["carbonExhausted", "oxidisedMembrane"]);
  const scaled = repairPlan(oddsWith({ scaledMembrane: 0.97, softenerFailed: 0.5 }));
  expect(scaled.steps.map(({ cause }) => cause)).toEqual(["softenerFailed", "scaledMembrane"]);
});

it("a forerunner that is only possible is named to be ruled out first", () => {
  const plan = repairPlan(oddsWith({ scaledMembrane: 0.97, softenerFailed: 0.2 }));
  expect(plan.steps.map(({ cause }) => cause)).toEqual(["scaledMembrane"]);
  expect(plan.steps[0]!.first).toEqual(["softenerFailed"]);
});

it("nothing is repaired on a sound unit", () => {
  expect(repairPlan(oddsWith({ healthy: 0.98 })).steps).toEqual([]);
});

it("every repair that opens the unit says so, and every repair says what to measure again", () => {
  for (const cause of CAUSE_IDS) {
    const { parts, cautions, measureAgain } = REPAIRS[cause];
    if (parts.includes("element") || parts.includes("preFilter"))
      expect(cautions).toContain("pressureToZero");
    if (parts.length > 0) expect(measureAgain.length).toBeGreaterThan(0);
  }
});

it("after a repair the unit's old readings are gone, the water's stay, the new ones count", () => {
  const before = { feedTds: 300, permeateTds: 60, permeateFlow: 10, temperature: 15 };
  const after = measuredAgain(before, ["oxidisedMembrane"], { permeateTds: 12 });
  expect(after).toEqual({ feedTds: 300, temperature: 15, permeateTds: 12 });
  expect(mustMeasureAgain("oxidisedMembrane")).toContain("permeateTds");
});

it("an owner reads found, most likely or not confirmed", () => {
  const likely = oddsWith({ checkValveFailed: 0.93 });
  const before = likely;
  const after = oddsWith({ healthy: 0.97 });
  const cause = "checkValveFailed";
  expect(saidToOwner({ cause, before, after, confirmed: true })).toBe("found");
  expect(saidToOwner({ cause, before, after })).toBe("mostLikely");
  expect(saidToOwner({ cause, before, after: likely, confirmed: true })).toBe("mostLikely");
  expect(saidToOwner({ cause, before, confirmed: true })).toBe("mostLikely");
  expect(saidToOwner({ cause: "sealLeak", before, after })).toBe("notConfirmed");
});
