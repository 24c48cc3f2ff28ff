import type { KeptVisit } from "@tapside/records";
import { expect, it } from "vitest";
import { foundInBook, withFound } from "./found-in-book.ts";
import { SEARCH } from "./search-answers.ts";
import { ordinaryVisit } from "./testing/trials.ts";

const [one] = ordinaryVisit().visits;
const visit = (closed: boolean, found: readonly string[]): KeptVisit =>
  ({
    ...one!,
    closed,
    answers: { [SEARCH.repaired]: ["carbonExhausted", "airChargeLow"], [SEARCH.found]: found },
  }) as KeptVisit;

it("what was put right and confirmed is found; what is open, only put right, or unknown is not", () => {
  const visits = [
    visit(true, ["airChargeLow"]),
    visit(true, ["airChargeLow", "coldWater"]),
    visit(false, ["carbonExhausted"]),
  ];
  expect(foundInBook(visits)).toEqual({ airChargeLow: 2 });
});

it("taken over twice, found causes count once; counts from elsewhere stay", () => {
  const once = withFound({ coldWater: 4, airChargeLow: 1 }, { airChargeLow: 2 });
  expect(once).toEqual({ coldWater: 4, airChargeLow: 2 });
  expect(withFound(once, { airChargeLow: 2 })).toEqual(once);
});
