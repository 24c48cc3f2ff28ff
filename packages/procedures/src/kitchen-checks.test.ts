import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carbonDays, carbonLitres, sanitiserDoseMl, scaldTime, steamAtMostKgPerH } from "./index.ts";

const GALLON_L = 3.785411784;

/** The value of a known outcome. */
function valueIn<T>(outcome: { readonly kind: string; readonly value?: T }): T {
  expect(outcome.kind).toBe("known");
  return outcome.value as T;
}

describe("dose of sanitiser", () => {
  it("50 mg/L in 3 gal with 52.5 g/L bleach is 10.8 mL (arithmetic of common practice, no source; ±0.1 by rounding)", () => {
    const ml = valueIn(sanitiserDoseMl({ targetMgPerL: 50, litres: 3 * GALLON_L, strengthGPerL: 52.5 }));
    expect(Math.abs(ml - 10.8)).toBeLessThanOrEqual(0.1);
  });
  it("3 mL of the same in 1.8 gal is 23 mg/L (a maker's worked example, common practice)", () => {
    const litres = 1.8 * GALLON_L;
    const ml = valueIn(sanitiserDoseMl({ targetMgPerL: 23, litres, strengthGPerL: 52.5 }));
    expect(Math.abs(ml - 3)).toBeLessThanOrEqual(0.05);
  });
  it("the chlorine put in is the chlorine wanted, whatever the volume (mass balance)", () => {
    const amount = fc.double({ min: 1, max: 400, noNaN: true });
    fc.assert(
      fc.property(
        amount,
        amount,
        fc.double({ min: 5, max: 150, noNaN: true }),
        (target, litres, strength) => {
          const ml = valueIn(sanitiserDoseMl({ targetMgPerL: target, litres, strengthGPerL: strength }));
          expect((ml * strength) / litres).toBeCloseTo(target, 6);
        },
      ),
    );
  });
  it.each([
    [{ targetMgPerL: 0, litres: 10, strengthGPerL: 50 }, "dose-needs"],
    [{ targetMgPerL: 50, litres: Number.NaN, strengthGPerL: 50 }, "dose-needs"],
    [{ targetMgPerL: 5000, litres: 10, strengthGPerL: 50 }, "dose-too-strong"],
    [{ targetMgPerL: 400, litres: 10, strengthGPerL: 0.1 }, "product-too-weak"],
  ])("refuses %j", (request, code) => {
    expect(sanitiserDoseMl(request)).toMatchObject({ kind: "refused", code });
  });
});

describe("evaporation", () => {
  it("1 kW from 15 °C water makes 1.378 kg/h of steam at 100 °C (IAPWS-IF97: 2675.57 − 63.08 kJ/kg; ±0.5 %)", () => {
    const kgPerH = valueIn(steamAtMostKgPerH(1, 15));
    expect(Math.abs(kgPerH / 1.378 - 1)).toBeLessThan(0.005);
    expect(Math.abs(kgPerH / GALLON_L - 0.364)).toBeLessThan(0.002);
  });
  it("a 9 kW generator makes at most 12.4 kg/h, 3.28 gal/h (same enthalpies)", () => {
    const kgPerH = valueIn(steamAtMostKgPerH(9, 15));
    expect(Math.abs(kgPerH - 12.4)).toBeLessThan(0.05);
    expect(Math.abs(kgPerH / GALLON_L - 3.28)).toBeLessThan(0.01);
  });
});

describe("litres of carbon", () => {
  it.each([
    [1.5, 760_000],
    [1.0, 1_140_000],
    [0.75, 1_520_000],
    [0.5, 2_282_000],
  ])(
    "570,000 gal at 2 mg/L are, at %d mg/L, the %d gal printed (a rating based on NSF/ANSI 42; 0.2 %: it is printed rounded)",
    (chlorine, printed) => {
      const gallons = valueIn(
        carbonLitres({ ratedLitres: 570_000, ratedChlorineMgPerL: 2, chlorineMgPerL: chlorine }),
      );
      expect(Math.abs(gallons / printed - 1)).toBeLessThanOrEqual(0.002);
    },
  );
  it("a 5,000 gal cartridge under 50 gal/d of permeate at 25 % recovery lasts 25 days, not 100 (all the feed passes it)", () => {
    expect(valueIn(carbonDays(5000, 50, 0.25))).toBe(25);
  });
});

describe("scald", () => {
  const rows = readFileSync(new URL("../../../reference/scald-times/data.csv", import.meta.url), "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(","));
  it.each(rows)(
    "at %s °F: %s %s s (Children's of Alabama, burn-prevention page)",
    (fahrenheit, relation, seconds) => {
      const celsius = ((Number(fahrenheit) - 32) * 5) / 9;
      expect(valueIn(scaldTime(celsius))).toEqual({ seconds: Number(seconds), relation });
    },
  );
  it("between two rows never promises more time than the cooler row prints", () => {
    fc.assert(
      fc.property(fc.double({ min: 49, max: 100, noNaN: true }), (celsius) => {
        const fahrenheit = (celsius * 9) / 5 + 32;
        const cooler = rows.filter(([from]) => Number(from) <= fahrenheit).at(-1)!;
        expect(valueIn(scaldTime(celsius)).seconds).toBeLessThanOrEqual(Number(cooler[2]));
      }),
    );
  });
  it("does not call cooler water safe", () => {
    expect(scaldTime(45)).toMatchObject({ kind: "refused", code: "below-scald-table" });
  });
});
