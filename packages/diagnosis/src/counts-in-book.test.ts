import { expect, it } from "vitest";
import { CAUSE_IDS } from "./causes.ts";
import { countsFrom, countsInBook } from "./counts-in-book.ts";
import { frequencies } from "./frequencies.ts";

const entry = (version: number, found: Record<string, number>) => ({
  id: `v${version}`,
  version,
  asOf: "2026-11-25",
  found,
  assumedWorth: 0,
});

it("the newest version counts; unknown causes and bad numbers are left out", () => {
  const shelf = new Map(
    [1, 3, 2].map((v) => [`v${v}`, entry(v, { coldWater: v, gremlins: 9, brineSeal: -1 })]),
  );
  expect(countsInBook(shelf)).toMatchObject({ version: 3, found: { coldWater: 3 } });
  expect(countsFrom({ found: { coldWater: 3 } })).toBeUndefined();
});

// Source: Dirichlet–multinomial with no weight of its own is the plain relative frequency (textbook).
it("where the assumption is worth nothing, shares are plain counts", () => {
  const counts = countsFrom(entry(1, { coldWater: 3, brineSeal: 1 }))!;
  const shares = frequencies(counts);
  expect(shares[CAUSE_IDS.indexOf("coldWater")]).toBeCloseTo(0.75, 12);
  expect(shares[CAUSE_IDS.indexOf("brineSeal")]).toBeCloseTo(0.25, 12);
});
