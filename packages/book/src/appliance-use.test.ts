import type { UnitFile } from "@tapside/records";
import { expect, it } from "vitest";
import { applianceUse } from "./appliance-use.ts";

const file = (...read: readonly (readonly [on: string, value: number, unit?: string])[]) =>
  ({
    appliances: [
      { id: "oven", name: "Oven" },
      { id: "ice", name: "Ice" },
    ],
    visits: read.map(([on, value, unit = "h"], i) => ({
      id: `v${i}`,
      startedAt: `${on}T08:00:00Z`,
      answers: { counters: { oven: { value, unit } } },
    })),
  }) as unknown as UnitFile;

/** Arithmetic: what a counter went on by, over the days between. */
it("is what the counter went on by a day; an appliance never counted is not named", () => {
  expect(applianceUse(file(["2026-10-01", 1000], ["2026-10-31", 1150]))).toEqual([
    {
      appliance: "oven",
      name: "Oven",
      unit: "h",
      on: "2026-10-31",
      value: 1150,
      perDay: 5,
      since: "2026-10-01",
    },
  ]);
});

it("passes over a reading less than a week back, one in another unit, and a counter set back", () => {
  expect(
    applianceUse(file(["2026-10-01", 1000], ["2026-10-30", 1100], ["2026-10-31", 1150]))[0]?.perDay,
  ).toBe(5);
  expect(applianceUse(file(["2026-10-01", 1000, "L"], ["2026-10-31", 1150]))[0]?.perDay).toBeUndefined();
  expect(applianceUse(file(["2026-10-01", 1000], ["2026-10-31", 12]))[0]?.perDay).toBeUndefined();
});

it("up to a visit knows nothing of later ones", () => {
  const all = file(["2026-10-01", 1000], ["2026-10-31", 1150], ["2026-11-30", 9999]);
  expect(applianceUse(all, "v1")[0]).toMatchObject({ value: 1150, perDay: 5 });
});
