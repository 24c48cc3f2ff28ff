import type { Kept, Part, Reading } from "@tapside/records";
import { expect, it } from "vitest";
import { assess } from "./assess.ts";
import { hoursLeft } from "./hours-left.ts";
import { context } from "./testing/build.ts";
import { tasteComplaint } from "./testing/trials.ts";

const counter = (value: number): Reading => ({
  raw: String(value),
  value,
  unit: "h",
  port: "hourMeter",
  at: "2026-11-25T08:00:00Z",
});

const lamp: Kept<Part> = {
  id: "lamp",
  unit: "u",
  role: "uvLamp",
  fittedOn: "2026-06-01",
  ratedHours: 9000,
  hoursAtFitting: 400,
};

/** The taste complaint's unit with a lamp, its counter at so many hours today. */
function withCounter(value: number | undefined, part = lamp) {
  const file = tasteComplaint();
  const today = file.visits.at(-1)!;
  const asFound = { ...today.readings.asFound, ...(value !== undefined && { hourCounter: counter(value) }) };
  const visit = { ...today, readings: { ...today.readings, asFound } };
  return {
    file: { ...file, parts: [...file.parts, part], visits: [...file.visits.slice(0, -1), visit] },
    visit,
  };
}

/** UV lamps are commonly made for 9,000 h, a year and a little day and night: common practice, no source. */
it("a lamp has what it is made for less what the counter went on; past nine tenths it is due (office rule), and why is said", () => {
  const { file, visit } = withCounter(8400);
  expect(hoursLeft(file, visit, lamp)).toBe(1000);
  const judged = (hours: number) => assess(withCounter(hours).file, "today", context);
  const of = (hours: number) => judged(hours).due.find((one) => one.part === "lamp");
  expect(of(8400)).toMatchObject({ hoursLeft: 1000, overdue: false });
  expect(of(8501)).toMatchObject({ hoursLeft: 899, overdue: true });
  expect(judged(9500).tasks.find((one) => one.id === "replace:uvLamp")).toMatchObject({ why: "dueByHours" });
});

it("without a counter, with one that went back, or without hours on record nothing is said of hours", () => {
  const none = withCounter(undefined);
  expect(hoursLeft(none.file, none.visit, lamp)).toBeUndefined();
  const back = withCounter(300);
  expect(hoursLeft(back.file, back.visit, lamp)).toBeUndefined();
  const { ratedHours: _, ...bare } = lamp;
  const { file, visit } = withCounter(8400, bare);
  expect(hoursLeft(file, visit, bare)).toBeUndefined();
});

it("the counter is asked for only where something in the unit is made for hours", () => {
  const asked = (file: ReturnType<typeof tasteComplaint>) =>
    assess(file, "today", context).toRead.map((one) => one.slot);
  expect(asked(tasteComplaint())).not.toContain("hourCounter");
});

it("a softener is due only where its record names months or hours", () => {
  const softener = { ...lamp, id: "soft", role: "softener" as const, ratedHours: 0 };
  const due = (part: Kept<Part>) =>
    assess(withCounter(500, part).file, "today", context).due.find((one) => one.part === "soft");
  expect(due(softener)).toBeUndefined();
  expect(due({ ...softener, intervalMonths: 3 })).toMatchObject({ byDate: "2026-09-01", overdue: true });
});
