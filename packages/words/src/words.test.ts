import { describe, expect, it } from "vitest";
import { assess } from "../../assessment/src/assess.ts";
import { cautionsOf } from "../../assessment/src/tasks.ts";
import { context, fileOf, ppm, visitOf } from "../../assessment/src/testing/build.ts";
import { drainAllNight, ordinaryVisit, tasteComplaint } from "../../assessment/src/testing/trials.ts";
import { en } from "./en/index.ts";

describe("cautions", () => {
  const tasks = [
    "replace:sediment",
    "replace:carbon",
    "replace:element",
    "replace:tank",
    "replace:uvLamp",
    "sanitise",
    "setAirCharge",
    "discardTank",
  ];
  it.each(tasks)("every caution that stands at %s has its sentence", (task) => {
    for (const id of cautionsOf(task)) expect(en.caution(id)).not.toMatch(/^Local code and/);
  });
});

it("names what is missing", () => {
  expect(en.missing({ kind: "missing", missing: ["afterFilterPressure"] })).toBe(
    "cannot tell, because pressure after the filters is missing",
  );
});

it("says a point left open in words, and by whom in which words it was refused", () => {
  expect(en.openPoint({ code: "work:replace:element", detail: "no time" })).toBe(
    "Replace membrane element: not done: no time",
  );
  expect(en.openPoint({ code: "exception:drainLine" })).toBe("Drain line and air gap");
  const refused = { refusedBy: "R. Hale", refusedRole: "kitchen lead", refusedOn: "2026-11-25" };
  expect(en.settledPoint({ ...refused, refusedWords: "not this year" })).toBe(
    "refused by R. Hale, kitchen lead, 25 Nov 2026: “not this year”",
  );
});

it("promises and certifies nothing", () => {
  expect(`${en.doesNotTestFor} ${en.localCode}`).not.toMatch(/certif|conform|guarantee|safe to drink/i);
});

it.each([
  ["normal", 10, 9],
  ["outside", 40, 9],
])(
  "says of a tank the element does not feel nothing that only back-pressure makes true: %s",
  (_, deliveredTds, permeateTds) => {
    const readings = { deliveredTds: ppm(deliveredTds), permeateTds: ppm(permeateTds) };
    const visits = [visitOf("today", "annual", "2026-11-25", readings)];
    const said = (unit: Parameters<typeof fileOf>[1]) => {
      const { findings } = assess(fileOf("Mill Hollow infants", unit, [], visits), "today", context);
      return JSON.stringify(en.finding(findings.find((one) => one.id === "deliveredOverMembrane")!));
    };
    for (const unit of [{ ventedTank: true }, { permeatePump: true }])
      expect(said(unit)).not.toMatch(/against pressure|1\.4|near full/);
    expect(said({})).toMatch(/against pressure|near full/);
  },
);

describe("a whole judgement", () => {
  const empty = fileOf("Mill Hollow infants", {}, [], [visitOf("today", "annual", "2026-11-25", {})]);
  const files = [ordinaryVisit(), ordinaryVisit("NaCl"), tasteComplaint(), drainAllNight(), empty];
  it.each(files.map((file) => [file.site.name ?? "", file] as const))(
    "at %s has words for everything",
    (_, file) => {
      const judged = assess(file, "today", context);
      const sentences = [
        ...judged.findings.flatMap((one) => Object.values(en.finding(one))),
        ...judged.questions.map((one) => en.question(one)),
        ...judged.tasks.flatMap((one) => [en.taskTitle(one.id), en.taskWhy(one)]),
      ];
      for (const text of sentences)
        expect(text.replaceAll("NaCl", "")).not.toMatch(
          /undefined|NaN|Infinity|[a-z][A-Z]{1}[a-z]|certif|conform/,
        );
      for (const one of judged.findings) expect(en.finding(one).title.length).toBeLessThan(36);
    },
  );
});
