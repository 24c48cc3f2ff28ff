import type { KeptVisit, Reading, UnitFile } from "@tapside/records";
import { expect, test } from "vitest";
import { caseFromFile } from "./case-from-file.ts";
import { SEARCH } from "./search-answers.ts";
import { ordinaryVisit } from "./testing/trials.ts";

const sceneOf = (file: UnitFile, phase: "asFound" | "asLeft" = "asFound") => {
  const found = caseFromFile(file, "today", phase);
  if (found.kind !== "known") throw new Error(found.kind);
  return found.value.scene;
};

/** The ordinary unit after today's visit put in a new element. */
function withNewElement(): UnitFile {
  const file = ordinaryVisit();
  const old = file.parts.find((part) => part.role === "element")!;
  const parts = file.parts.map((part) =>
    part === old ? { ...part, removedOn: "2026-11-25", removedVisit: "today" } : part,
  );
  const fresh = { ...old, id: "fresh", fittedOn: "2026-11-25", fittedVisit: "today" };
  return { ...file, parts: [...parts, fresh] };
}

test("as found speaks of the element the water went through, not of the one put in that day", () => {
  const before = sceneOf(ordinaryVisit());
  const asFound = sceneOf(withNewElement());
  expect(asFound.elementYears).toBeCloseTo(before.elementYears!, 12);
  expect(asFound.elementYears).toBeGreaterThan(2.9);
  expect(asFound.baseline).toBe(before.baseline);
  expect(asFound.baseline).not.toBe("label");
  const asLeft = sceneOf(withNewElement(), "asLeft");
  expect(asLeft.elementYears).toBeLessThan(0.01);
  expect(asLeft.baseline).toBe("label");
});

test("what a visit read of the supply while that was confirmed to be wrong is not usual there", () => {
  const low = (found: readonly string[]): UnitFile => {
    const file = ordinaryVisit();
    const pressure = (one: Reading): Reading => ({ ...one, raw: "2.2", value: 2.2 });
    return {
      ...file,
      visits: file.visits.map((visit) =>
        visit.id === "lastYear"
          ? ({
              ...visit,
              answers: { [SEARCH.repaired]: found, [SEARCH.found]: found },
              readings: {
                ...visit.readings,
                asFound: {
                  ...visit.readings.asFound,
                  beforeFilterPressure: pressure(visit.readings.asFound.beforeFilterPressure!),
                },
              },
            } as KeptVisit)
          : visit,
      ),
    };
  };
  expect(sceneOf(low([])).usual.feedPressureKPaGauge).toBeCloseTo(220, 6);
  expect(sceneOf(low(["lowFeedPressure"])).usual.feedPressureKPaGauge).toBeCloseTo(430, 6);
  expect(sceneOf(low(["airChargeLow"])).usual.feedPressureKPaGauge).toBeCloseTo(220, 6);
});

test("a unit with a permeate pump is none the network learned: a reason instead of odds", () => {
  const file = ordinaryVisit();
  const withPump = (more: object) =>
    caseFromFile({ ...file, unit: { ...file.unit, permeatePump: true, ...more } }, "today");
  expect(withPump({})).toMatchObject({ kind: "refused", code: "permeate-pump-untrained" });
  expect(withPump({ ventedTank: true }).kind).toBe("known");
});
