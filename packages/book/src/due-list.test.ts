import { type Book, bookOf, EMPTY_STATE, fold, NO_STAMP, nextStamp, SCHEMA } from "@tapside/records";
import { describe, expect, it } from "vitest";
import { carryList, plannedFor } from "./carry-list.ts";
import { dueList } from "./due-list.ts";
import { checkOfDay, offBy } from "./meter-check.ts";
import { ownersOf } from "./owners.ts";
import { searchText, unitsFound, whereIs } from "./search.ts";
import { pointHistory, unitHistory } from "./whereabouts.ts";
import { workLinesCsv } from "./work-lines.ts";

type Records = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

/** A book from records written "kind id". */
function book(records: Records): Book {
  let at = NO_STAMP;
  const changes = Object.entries(records).map(([name, fields], i) => {
    const [kind = "", record = ""] = name.split(" ");
    at = nextStamp(at, 1000 + i);
    return { id: `c${i}`, record, kind, fields: fields as never, at, device: "d", schema: SCHEMA };
  });
  return bookOf(fold(EMPTY_STATE, changes));
}

const meter = (value: number, day: string) => ({
  raw: String(value),
  value,
  unit: "m³",
  port: "meter",
  at: `${day}T08:00:00Z`,
});
const visit = (unit: string, day: string, more: object = {}) => ({
  unit,
  point: "p",
  kind: "annual",
  startedAt: `${day}T08:00:00Z`,
  endedAt: `${day}T09:30:00Z`,
  closed: true,
  ...more,
});

const KITCHEN: Records = {
  "site s": { name: "Sallow Lane crèche", code: "SL-4", chain: "Larkmoor" },
  "point p": { site: "s", name: "Back room" },
  "unit u": { point: "p", name: "Unit 1", serial: "A-17" },
  "part c": {
    unit: "u",
    role: "carbon",
    fittedOn: "2025-11-20",
    ratedLitres: 57000,
    meterAtFittingM3: 100,
    lot: "L-88",
  },
};

describe("due by date or by litres, whichever comes first", () => {
  it("a lamp of 9,000 h lit day and night is due after nine tenths of 375 days (9,000 h / 24 h: arithmetic)", () => {
    const hours = (value: number, day: string) => ({
      "reading:asFound:hourCounter": { ...meter(value, day), unit: "h", port: "hourMeter" },
    });
    const [row] = dueList(
      book({
        ...KITCHEN,
        "part c": { unit: "u", role: "uvLamp", fittedOn: "2026-01-01", ratedHours: 9000, hoursAtFitting: 0 },
        "visit v": visit("u", "2026-01-11", hours(240, "2026-01-11")),
        "visit w": visit("u", "2026-01-31", hours(720, "2026-01-31")),
      }),
      "2026-02-01",
    );
    expect(row?.reasons).toEqual([{ why: "hours", on: "2026-12-04", role: "uvLamp", part: "c" }]);
  });

  it("twelve months after fitting where nothing is metered (common practice, no source)", () => {
    const [row] = dueList(book({ ...KITCHEN, "visit v": visit("u", "2025-11-20") }), "2026-11-25");
    expect(row?.reasons).toEqual([{ why: "date", on: "2026-11-20", role: "carbon", part: "c" }]);
    expect(row?.overdue).toBe(true);
  });
  it("by litres where the meter runs it down sooner", () => {
    // 10 m³ in 100 days; the last tenth of 57 m³ is kept: (57 − 10 − 5.7) m³ at 0.1 m³ a day are 413 days.
    const slow = book({
      ...KITCHEN,
      "visit v1": visit("u", "2025-11-20", { "reading:asFound:waterMeter": meter(100, "2025-11-20") }),
      "visit v2": visit("u", "2026-02-28", { "reading:asFound:waterMeter": meter(110, "2026-02-28") }),
    });
    expect(dueList(slow, "2026-03-01")[0]?.reasons[0]).toMatchObject({ why: "date", on: "2026-11-20" });
    // 40 m³ in 100 days: (57 − 40 − 5.7) m³ at 0.4 m³ a day are 28 days.
    const fast = book({
      ...KITCHEN,
      "visit v1": visit("u", "2025-11-20", { "reading:asFound:waterMeter": meter(100, "2025-11-20") }),
      "visit v2": visit("u", "2026-02-28", { "reading:asFound:waterMeter": meter(140, "2026-02-28") }),
    });
    expect(dueList(fast, "2026-03-01")[0]?.reasons[0]).toMatchObject({ why: "litres", on: "2026-03-28" });
  });
  it("a bypass permission, a loan and an open point come up on their days; an open visit first", () => {
    const asked = { decision: "keepBypassed", name: "R. Hale", role: "cook", until: "2026-12-01" };
    const all = book({
      ...KITCHEN,
      "visit v": visit("u", "2026-10-01", { "answer:inUse": "bypassed", "answer:bypass": asked }),
      "openPoint o": { unit: "u", code: "work:replace:element", due: "2026-11-30" },
      "move m": { unit: "u", to: "p", on: "2026-10-01", why: "lent", until: "2027-01-15" },
      "unit w": { point: "", name: "Spare" },
      "visit x": { ...visit("w", "2026-11-01"), closed: false },
    });
    const rows = dueList(all, "2026-11-25");
    expect(rows.map((row) => row.unit)).toEqual(["w", "u"]);
    expect(rows[1]?.reasons.map(({ why, on }) => [why, on])).toEqual([
      ["date", "2026-11-20"],
      ["openPoint", "2026-11-30"],
      ["bypassEnds", "2026-12-01"],
      ["loanEnds", "2027-01-15"],
    ]);
    expect(carryList([rows[1]!], "2026-11-25").map(({ role, count }) => [role, count])).toEqual([
      ["carbon", 1],
      ["element", 1],
    ]);
  });
});

it("a day holds its visits in order of time", () => {
  const all = book({
    ...KITCHEN,
    "plan a": { unit: "u", on: "2026-11-25", at: "14:30" },
    "plan b": { unit: "u", on: "2026-11-25", at: "06:30" },
    "plan c": { unit: "u", on: "2026-11-26" },
  });
  expect(plannedFor(all, "2026-11-25").map((plan) => plan.id)).toEqual(["b", "a"]);
});

describe("search", () => {
  const all = book({
    ...KITCHEN,
    "part old": { unit: "u", role: "carbon", lot: "L-12", removedOn: "2025-11-20" },
  });
  const lines = dueList(all, "2026-11-25").map((row) => ({ text: searchText(row.file, ["Tern Foods"]) }));
  it.each(["creche", "SL-4", "larkmoor back", "a-17", "l-88", "tern foods"])(
    "finds a unit by %s",
    (query) => {
      expect(unitsFound(lines, query)).toHaveLength(1);
    },
  );
  it("finds nothing by what is not there", () => expect(unitsFound(lines, "creche oak")).toEqual([]));
  it("tells where a lot is, in service or taken out", () => {
    expect(whereIs(all, "l-8").map((hit) => [hit.unit, hit.inService])).toEqual([["u", true]]);
    expect(whereIs(all, "L-12")[0]?.inService).toBe(false);
  });
});

describe("point, unit and owner are three things", () => {
  const all = book({
    ...KITCHEN,
    "point q": { site: "s", name: "Bar" },
    "unit spare": { point: "p", name: "Spare", serial: "Z-1" },
    "move m1": { unit: "u", from: "p", on: "2026-05-01", why: "swapped" },
    "move m2": { unit: "spare", to: "p", on: "2026-05-01", why: "lent", until: "2026-06-01" },
    "move m3": { unit: "u", to: "q", on: "2026-06-10", why: "moved" },
    "ownership o1": { site: "s", owner: "First", since: "2020-01-01" },
    "ownership o2": { site: "s", owner: "Second", since: "2026-03-01", seesEarlier: false },
  });
  it("a unit's history follows it", () => {
    expect(unitHistory(all, "u").map(({ point, until }) => [point, until])).toEqual([
      ["p", "2026-05-01"],
      ["", "2026-06-10"],
      ["q", undefined],
    ]);
  });
  it("a place remembers every unit that hung there", () => {
    expect(pointHistory(all, "p").map((span) => span.unit)).toEqual(["u", "spare"]);
  });
  it("a new owner sees what was from the cut-off on, unless it was agreed otherwise", () => {
    expect(ownersOf(all, "s").map(({ owner, seesFrom, until }) => [owner, seesFrom, until])).toEqual([
      ["First", "", "2026-03-01"],
      ["Second", "2026-03-01", undefined],
    ]);
  });
});

it("a meter check covers its own day and says how far off: 1399 for 1413 is 1.0 % low", () => {
  const all = book({
    "meterCheck k": {
      instrument: "i",
      at: "2026-11-25T06:10:00Z",
      standard: 1413,
      read: 1399,
      unit: "µS/cm",
    },
  });
  const check = checkOfDay(all, "i", "2026-11-25");
  expect(offBy(check!)).toBeCloseTo(-0.99, 2);
  expect(checkOfDay(all, "i", "2026-11-26")).toBeUndefined();
});

it("work lines carry minutes, part, lot, reason and no price", () => {
  const all = book({
    ...KITCHEN,
    "visit v": visit("u", "2026-11-25", {
      "work:replace:carbon": { state: "left", reason: "no part, ordered" },
    }),
  });
  const [head, first, second] = workLinesCsv(all).split("\r\n");
  expect(head).not.toMatch(/price|cost|amount/i);
  expect(first).toContain(",visit,90,");
  expect(second).toContain('replace:carbon,,left,"no part, ordered"');
});
