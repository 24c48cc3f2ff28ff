import type { KeptVisit, UnitFile } from "@tapside/records";
import { expect, test } from "vitest";
import { drainAllNight, ordinaryVisit } from "../../assessment/src/testing/trials.ts";
import { ownScore, scoreTotals, techniciansIn } from "./own-score.ts";

/** The ordinary unit as of last year's visit, with later visits of no readings. */
function lastYear(
  change: Partial<KeptVisit>,
  later: readonly (readonly [string, string, string])[] = [],
): UnitFile {
  const file = ordinaryVisit("NaCl");
  const [fresh, read] = file.visits;
  const { asFound } = read!.readings;
  const solids = { ...asFound.permeateTds!, raw: "7", value: 7 };
  const judged = { ...read!, readings: { ...read!.readings, asFound: { ...asFound, permeateTds: solids } } };
  const blank = (id: string, kind: string, day: string) =>
    ({
      ...fresh!,
      id,
      kind,
      startedAt: `${day}T08:00:00Z`,
      technician: "Pike",
      readings: { asFound: {}, asLeft: {} },
    }) as KeptVisit;
  return {
    ...file,
    parts: file.parts.map((part) => (part.role === "element" ? { ...part, intervalMonths: 12 } : part)),
    visits: [
      { ...fresh!, technician: "Orme" },
      { ...judged, technician: "Orme", ...change },
      ...later.map(([id, kind, day]) => blank(id, kind, day)),
    ],
  };
}

function scoresOf(...files: readonly UnitFile[]) {
  const steps = ownScore({ files, settings: new Map(), since: "2025-01-01" });
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

test("an element past its day that reads as good is told as kept, one thrown out as good by name", () => {
  const work = { "replace:element": { state: "done" } } as unknown as KeptVisit["work"];
  expect(scoresOf(lastYear({})).map((one) => one.element)).toEqual(["keptAsGood"]);
  expect(scoresOf(lastYear({ work })).map((one) => one.element)).toEqual(["newThoughGood"]);
  expect(scoreTotals(scoresOf(lastYear({}), lastYear({ work }))).elements).toEqual({
    newThoughGood: 1,
    new: 0,
    keptAsGood: 1,
  });
});

test("readings of a sound unit are held against what was told; those of a faulty one are not", () => {
  const [sound] = scoresOf(lastYear({}));
  expect(sound!.told).toBeGreaterThanOrEqual(3);
  expect(sound!.inside).toBe(sound!.told);
  const faulty = scoresOf(drainAllNight()).find((one) => one.id === "today");
  expect(faulty).toMatchObject({ told: 0, inside: 0 });
});

test("a call-out within thirty days calls back the visit before it, at the cost of who made that", () => {
  const scores = scoresOf(
    lastYear({}, [
      ["shut", "noAccess", "2025-12-01"],
      ["back", "callOut", "2025-12-10"],
      ["later", "quality", "2026-02-20"],
    ]),
  );
  expect(scores.map((one) => one.callsBack)).toEqual([undefined, undefined, "Orme", undefined]);
  expect(techniciansIn(scores)).toEqual(["Orme", "Pike"]);
  expect(scoreTotals(scores, "Orme")).toMatchObject({ visits: 1, callBacks: 1 });
  expect(scoreTotals(scores, "Pike")).toMatchObject({ visits: 3, callBacks: 0 });
  expect(scoreTotals(scores)).toMatchObject({ visits: 4, callBacks: 1 });
});

test("what lies before the day asked for is not looked at", () => {
  expect(scoresOf(lastYear({})).map((one) => one.on)).toEqual(["2025-11-20"]);
});
