import { bookOf, type Change, EMPTY_STATE, fold, SCHEMA } from "@tapside/records";
import { expect, it } from "vitest";
import { readCsv } from "./csv.ts";
import { dueList } from "./due-list.ts";
import { type MonthAsked, type MonthlySummary, monthlyCsv, monthlySummary } from "./monthly-summary.ts";

let count = 0;
const put = (kind: string, record: string, fields: object) =>
  ({
    id: `c${count++}`,
    record,
    kind,
    fields,
    at: `2026-01-01T00:00:00.${String(count).padStart(3, "0")}Z/0000`,
    device: "d",
    schema: SCHEMA,
  }) as unknown as Change;
const ppm = (value: number, port: string) => ({
  raw: `${value}`,
  value,
  unit: "ppm",
  port,
  at: "2026-11-03T08:00:00Z",
});
const unit = (n: number, chain: string) => [
  put("site", `s${n}`, { name: `Kitchen ${n}`, code: `K-${n}`, chain }),
  put("point", `p${n}`, { site: `s${n}`, name: "Kitchen" }),
  put("unit", `u${n}`, { point: `p${n}`, name: "Unit 1" }),
  put("appliance", `a${n}`, { site: `s${n}`, point: `p${n}`, name: "Oven", type: "combiOven" }),
  put("limit", `l${n}`, { appliance: `a${n}`, quantity: "tds", high: 50, unit: "ppm", source: "label" }),
];
const visit = (id: string, n: number, day: string, more: object = {}) =>
  put("visit", id, {
    unit: `u${n}`,
    point: `p${n}`,
    kind: "annual",
    technician: "Ines",
    startedAt: `${day}T08:00:00Z`,
    endedAt: `${day}T08:45:00Z`,
    closed: true,
    ...more,
  });

const book = bookOf(
  fold(EMPTY_STATE, [
    ...unit(1, "North"),
    ...unit(2, "North"),
    ...unit(3, "South"),
    visit("v1", 1, "2026-11-03", { "reading:asFound:deliveredTds": ppm(120, "delivered") }),
    visit("v2", 2, "2026-11-20", {
      kind: "filterOnly",
      "reading:asFound:deliveredTds": ppm(10, "delivered"),
    }),
    visit("v3", 2, "2026-10-31"),
    visit("v4", 3, "2026-11-30", {
      "answer:inUse": "bypassed",
      "answer:bypass": { name: "R. Hale", role: "cook", decision: "keepBypassed", until: "2026-12-24" },
    }),
    put("part", "c1", { unit: "u2", role: "carbon", fittedOn: "2026-11-20", fittedVisit: "v2" }),
    put("part", "c2", { unit: "u1", role: "carbon", fittedOn: "2026-10-20", fittedVisit: "v0" }),
    put("openPoint", "o1", {
      unit: "u1",
      openedVisit: "v1",
      code: "work:replace:element",
      detail: "no part",
    }),
  ]),
);

function summed(more: Partial<MonthAsked> = {}): MonthlySummary {
  const today = "2026-12-01";
  const rows = dueList(book, today);
  const steps = monthlySummary({ month: "2026-11", rows, today, settings: book.settings, ...more });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

it("holds the visits of the month and no other, the first first, with their minutes", () => {
  const { visits, byKind, sites } = summed();
  expect(visits.map(({ id, minutes }) => [id, minutes])).toEqual([
    ["v1", 45],
    ["v2", 45],
    ["v4", 45],
  ]);
  expect(byKind).toEqual([
    { id: "annual", count: 2 },
    { id: "filterOnly", count: 1 },
  ]);
  expect(sites).toBe(3);
});

it("counts what was outside its limit, parts fitted that month, what is open and bypassed", () => {
  const { findings, partsUsed, openPoints, bypassed } = summed();
  expect(findings.find((one) => one.id === "delivered")).toEqual({ id: "delivered", count: 1 });
  expect(partsUsed).toEqual([{ id: "carbon", count: 1 }]);
  expect(openPoints.map(({ point }) => point.id)).toEqual(["o1"]);
  expect(bypassed.map(({ file, until }) => [file.unit.id, until])).toEqual([["u3", "2026-12-24"]]);
});

it("of one chain only its own", () => {
  const { visits, sites, bypassed } = summed({ chain: "North" });
  expect([visits.length, sites, bypassed.length]).toEqual([2, 2, 0]);
});

it("as a table every line names its section and, where there is one, its site", () => {
  const [head, ...lines] = readCsv(monthlyCsv(summed()));
  expect(head?.cells.slice(0, 3)).toEqual(["section", "site_code", "site"]);
  const visits = lines.filter(({ cells }) => cells[0] === "visit");
  expect(visits.map(({ cells }) => [cells[1], cells[4], cells[5], cells[6]])).toEqual([
    ["K-1", "2026-11-03", "annual", "45"],
    ["K-2", "2026-11-20", "filterOnly", "45"],
    ["K-3", "2026-11-30", "annual", "45"],
  ]);
});
