import type { KeptVisit, Reading, SlotId, UnitFile } from "@tapside/records";
import { expect, it } from "vitest";
import { repairedIn, type VisitOfUnit } from "./answers-of.ts";
import { noteOf, noteTimeOf } from "./case-from-file.ts";
import { hourOf } from "./hour-of-visit.ts";
import { saidCauses } from "./said-causes.ts";
import { SEARCH } from "./search-answers.ts";
import { ordinaryVisit } from "./testing/trials.ts";
import { phaseNow, repairedAnswers, testOwed, visitCase } from "./visit-case.ts";

/** The ordinary visit with more answers, and readings as left. */
function visitWith(answers: object, asLeft: Partial<Record<SlotId, Reading>> = {}): VisitOfUnit {
  const file = ordinaryVisit();
  const today = file.visits.find(({ id }) => id === "today")!;
  const visit = {
    ...today,
    answers: { ...today.answers, ...answers },
    readings: { ...today.readings, asLeft },
  } as KeptVisit;
  const visits = file.visits.map((one) => (one.id === "today" ? visit : one));
  return { file: { ...file, visits } as UnitFile, visit };
}

const repaired = { [SEARCH.repaired]: ["preFilterClogged"] };
const found = visitWith({}).visit.readings.asFound;

it("before a repair every reading as found counts, and nothing is owed", () => {
  const one = visitWith({});
  expect([phaseNow(one), repairedIn(one), testOwed(one)]).toEqual(["asFound", [], undefined]);
  expect(visitCase(one)).toMatchObject({
    kind: "known",
    value: { readings: { permeateTds: expect.any(Number) } },
  });
});

it("after a repair what was read of the unit is gone, the water's stays, and re-measurement is owed in turn", () => {
  const one = visitWith(repaired);
  const now = visitCase(one);
  if (now.kind !== "known") throw new Error("known");
  expect(now.value.readings).not.toHaveProperty("permeateTds");
  expect(now.value.readings).toHaveProperty("feedTds");
  expect(now.value.scene.filterMonths).toBe(0);
  expect(testOwed(one)).toBe("afterFilterPressure");
  const half = visitWith(repaired, { afterFilterPressure: found.afterFilterPressure! });
  expect(testOwed(half)).toBe("permeateFlow");
  const { afterFilterPressure, permeateFlow } = found;
  const whole = visitWith(repaired, {
    afterFilterPressure: afterFilterPressure!,
    permeateFlow: permeateFlow!,
  });
  expect(testOwed(whole)).toBeUndefined();
});

it("what was read between two repairs no longer counts after the second", () => {
  const { permeateFlow, afterFilterPressure } = found;
  const at = (time: string) => `2026-11-25T${time}+00:00`;
  const between = {
    permeateFlow: { ...permeateFlow!, at: at("07:30:00") },
    afterFilterPressure: { ...afterFilterPressure!, at: at("07:31:00") },
  };
  const one = repairedAnswers(visitWith({}), ["preFilterClogged"], at("07:00:00"));
  expect(testOwed(visitWith(one, between))).toBeUndefined();
  const two = {
    [SEARCH.repaired]: ["preFilterClogged", "fouledMembrane"],
    [SEARCH.repairedAt]: [at("07:00:00"), at("08:00:00")],
    [noteOf("drawOffL", "asLeft")]: 6,
    [noteTimeOf("drawOffL", "asLeft")]: at("07:40:00"),
  };
  expect(testOwed(visitWith(two, between))).toBe("permeateFlow");
  const now = visitCase(visitWith(two, between));
  if (now.kind !== "known") throw new Error("known");
  expect(now.value.readings).not.toHaveProperty("permeateFlow");
  expect(now.value.readings).not.toHaveProperty("drawOffL");
  const again = { ...between, permeateFlow: { ...permeateFlow!, at: at("08:10:00") } };
  expect(testOwed(visitWith(two, again))).not.toBe("permeateFlow");
});

it("taking the last repair back takes its time back, and keeps the others'", () => {
  const one = visitWith({ [SEARCH.repaired]: ["preFilterClogged"], [SEARCH.repairedAt]: ["07:00"] });
  const two = repairedAnswers(one, ["preFilterClogged", "airChargeLow"], "08:00");
  expect(two).toEqual({
    [SEARCH.repaired]: ["preFilterClogged", "airChargeLow"],
    [SEARCH.repairedAt]: ["07:00", "08:00"],
  });
  const back = repairedAnswers(visitWith(two), ["preFilterClogged"], "09:00");
  expect(back[SEARCH.repairedAt]).toEqual(["07:00"]);
  expect(repairedAnswers(visitWith(back), [], "09:00")[SEARCH.repairedAt]).toBeNull();
});

it("tools left behind, set-ups made and a busy kitchen are taken from the visit; strangers are left out", () => {
  const hour = hourOf(visitWith({ [SEARCH.kitchenBusy]: true, [SEARCH.setUps]: ["no such thing"] }));
  expect(hour).toMatchObject({ kitchenBusy: true, setUps: [] });
  expect(hour.tools.length).toBeGreaterThan(0);
});

it("the record says nothing of causes that nobody looked for; of the others how large, within an interval", async () => {
  expect(await saidCauses(visitWith({}), undefined)).toEqual([]);
  const [said] = await saidCauses(visitWith(repaired), undefined);
  expect(said).toMatchObject({ cause: "preFilterClogged", said: "mostLikely" });
  const [loss] = said!.measures;
  expect(loss?.measure).toBe("filterLoss");
  // Truth of the trial: 7 times the loss of a clean cartridge.
  expect(loss!.low).toBeLessThan(7);
  expect(loss!.high).toBeGreaterThan(7);
  expect(said?.said).not.toBe("found");
});
