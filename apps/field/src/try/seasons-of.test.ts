import { describe, expect, it } from "vitest";
import { seasonsOf } from "./seasons-of.ts";

const read = (...temperatures: readonly (readonly [number, string])[]) =>
  seasonsOf({
    visits: temperatures.map(([value, unit], i) => ({
      id: String(i),
      readings: { asFound: { feedTemperature: { raw: "", value, unit, port: "feed", at: "" } }, asLeft: {} },
    })) as never,
  });

describe("winter and summer of a site's feed", () => {
  it("are its coldest and warmest reading, whatever unit they were read in", () => {
    expect(read([8, "°C"], [69.8, "°F"], [14, "°C"])).toEqual({ winter: 8, summer: 21 });
  });
  it("are the usual ones where nobody read any", () => {
    expect(read()).toEqual({ winter: 6, summer: 20 });
  });
  it("of readings of one season only: the usual ones, unless it was colder or warmer", () => {
    expect(read([9, "°C"], [10, "°C"])).toEqual({ winter: 6, summer: 20 });
    expect(read([3, "°C"])).toEqual({ winter: 3, summer: 20 });
    expect(read([24, "°C"])).toEqual({ winter: 6, summer: 24 });
  });
});
