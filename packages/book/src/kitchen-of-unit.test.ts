import { readFileSync } from "node:fs";
import { remedy } from "@tapside/kitchen";
import { bookOf, EMPTY_STATE, fold, importFile, type UnitFile, unitFile } from "@tapside/records";
import { describe, expect, it } from "vitest";
import { kitchenOfUnit, usesOf } from "./kitchen-of-unit.ts";

const district = importFile(
  readFileSync(new URL("../../../examples/larkmoor.tapside.json", import.meta.url), "utf8"),
);
if (district.kind !== "known") throw new Error(district.kind);
const book = bookOf(fold(EMPTY_STATE, district.value.changes));
const context = { asOf: "2026-11-25T08:00:00Z", timeZone: "UTC", settings: {} };
const file = unitFile(book, "demo:20:unit")!;

const withAppliance = (fields: Partial<UnitFile["appliances"][number]>): UnitFile => ({
  ...file,
  appliances: file.appliances.map((one) => ({ ...one, ...fields })),
});
const counted = (litres: readonly (readonly [day: string, value: number])[]): UnitFile => {
  const bare = withAppliance({ litresPerDay: undefined as never });
  const [appliance] = bare.appliances;
  const visits = litres.map(([day, value], i) => ({
    ...file.visits[0]!,
    id: `counted:${i}`,
    startedAt: `${day}T08:00:00Z`,
    answers: { counters: { [appliance!.id]: { value, unit: "L" } } },
  }));
  return { ...bare, visits: [...file.visits, ...visits] as UnitFile["visits"] };
};

describe("what an appliance takes", () => {
  it("is what the kitchen tells, known to a fifth", () => {
    const [told] = usesOf(withAppliance({ litresPerDay: 50 }));
    expect(told).toMatchObject({ from: "told", use: { litresPerDay: { value: 50, u: 10 } } });
  });
  it("else the mean of its own counter, known less well", () => {
    const [told] = usesOf(
      counted([
        ["2026-10-01", 1000],
        ["2026-10-31", 1900],
      ]),
    );
    expect(told).toMatchObject({ from: "counter", use: { litresPerDay: { value: 30, u: 9 } } });
  });
  it("is not told by one reading of a counter", () => {
    expect(usesOf(counted([["2026-10-01", 1000]]))[0]).toMatchObject({ from: "nowhere" });
  });
  it("lies within the hours told; half an hour told wrong is spread as in a restaurant", () => {
    const shares = (from: string, until: string) =>
      usesOf(withAppliance({ litresPerDay: 50, usedFrom: from, usedUntil: until }))[0]?.use?.hours;
    expect(shares("06:30", "08:00")?.filter((share) => share > 0)).toHaveLength(2);
    expect(shares("half past six", "08:00")).toBeUndefined();
  });
});

describe("the kitchen of a unit", () => {
  it("is not known while nothing is told of any appliance", () => {
    const bare = withAppliance({ litresPerDay: undefined as never });
    expect(kitchenOfUnit(bare, context)).toEqual({ kind: "missing", missing: ["appliance.litresPerDay"] });
  });
  it("with a permeate pump makes more, known less well", () => {
    const kitchen = (permeatePump: boolean) => {
      const told = withAppliance({ litresPerDay: 50 });
      const one = kitchenOfUnit({ ...told, unit: { ...told.unit, permeatePump } }, context);
      if (one.kind !== "known") throw new Error(one.kind);
      const serves = remedy("asItIs", one.value, { madeRelative: one.value.madeRelative })?.answer;
      if (serves?.kind !== "known") throw new Error("serves nothing");
      return { u: one.value.madeRelative, ...serves.value.serves };
    };
    const [bare, pumped] = [kitchen(false), kitchen(true)];
    expect(pumped.u).toBeGreaterThan(bare.u);
    expect(pumped.value).toBeGreaterThan(bare.value);
    expect(pumped.low / pumped.value).toBeLessThan(bare.low / bare.value);
  });
  it("stands in the coldest water the unit was read in", () => {
    const told = kitchenOfUnit(file, context);
    if (told.kind !== "known") throw new Error(told.kind);
    const read = file.visits.flatMap(({ readings: { asFound, asLeft } }) =>
      [asFound, asLeft].flatMap((phase) => phase.feedTemperature?.value ?? []),
    );
    expect(read.length).toBeGreaterThan(2);
    expect(told.value.situation.conditions.temperatureC).toBeCloseTo(Math.min(...read), 6);
    expect(told.value.asRead.conditions.temperatureC).toBeGreaterThanOrEqual(Math.min(...read));
  });
});
