import { bookOf, type Change, EMPTY_STATE, fold, NO_STAMP, nextStamp, SCHEMA } from "@tapside/records";
import { expect, it } from "vitest";
import { carryInVan, vanStock } from "./van-stock.ts";

type Entry = readonly [why: string, count: number, at: string];

function stock(entries: readonly Entry[], fitted: readonly string[] = []) {
  let at = NO_STAMP as string;
  const change = (kind: string, record: string, fields: Change["fields"]): Change => {
    at = nextStamp(at, 1000);
    return { id: `${kind}${record}`, record, kind, fields, at, device: "d", schema: SCHEMA };
  };
  const changes = [
    ...entries.map(([why, count, on], i) =>
      change("vanEntry", `e${i}`, { role: "carbon", why, count, at: `${on}T06:00:00Z` }),
    ),
    ...fitted.map((on, i) =>
      change("visit", `v${i}`, {
        startedAt: `${on}T09:00:00Z`,
        "work:replace:carbon": { state: "done" },
        "work:replace:sediment": { state: "left" },
      }),
    ),
  ];
  return vanStock(bookOf(fold(EMPTY_STATE, changes)));
}

/** Bookkeeping: what was there and came in, less what went out, is what is there. */
it("counts what was loaded, less what was fitted at visits and returned", () => {
  const entries: readonly Entry[] = [
    ["counted", 4, "2026-11-01"],
    ["loaded", 2, "2026-11-03"],
    ["returned", 1, "2026-11-05"],
  ];
  expect(stock(entries, ["2026-10-30", "2026-11-02", "2026-11-06"])).toEqual([
    { role: "carbon", inVan: 3, ordered: 0, used: 2, countAgain: false },
  ]);
});

it("a new count rules over everything before it", () => {
  const entries: readonly Entry[] = [
    ["loaded", 9, "2026-11-01"],
    ["counted", 1, "2026-11-04"],
  ];
  expect(stock(entries, ["2026-11-02"])[0]).toMatchObject({ inVan: 1, used: 0 });
});

it("what is loaded comes off what was ordered; more used than loaded asks for a count", () => {
  const entries: readonly Entry[] = [
    ["counted", 0, "2026-11-01"],
    ["ordered", 3, "2026-11-02"],
    ["loaded", 2, "2026-11-05"],
  ];
  expect(stock(entries)[0]).toMatchObject({ inVan: 2, ordered: 1 });
  expect(stock([["counted", 1, "2026-11-01"]], ["2026-11-02", "2026-11-03"])[0]).toMatchObject({
    inVan: 0,
    countAgain: true,
  });
});

it("a kind never written of is not counted, so nothing is said to be short of it", () => {
  const carry = [
    { role: "carbon", count: 3, units: ["a", "b", "c"] },
    { role: "sediment", count: 2, units: ["a", "b"] },
  ];
  const lines = carryInVan(
    carry,
    stock([
      ["counted", 1, "2026-11-01"],
      ["ordered", 1, "2026-11-02"],
    ]),
  );
  expect(lines[0]).toMatchObject({ inVan: 1, short: 2, toOrder: 1 });
  expect(lines[1]).toEqual(carry[1]);
});
