import fc from "fast-check";
import { expect, it } from "vitest";
import { assess } from "./assess.ts";
import { context, type Typed, visitOf } from "./testing/build.ts";
import { drainAllNight, ordinaryVisit, tasteComplaint } from "./testing/trials.ts";

const SLOTS = [
  "feedTds",
  "feedTemperature",
  "chlorineBefore",
  "chlorineAfter",
  "staticPressure",
  "beforeFilterPressure",
  "afterFilterPressure",
  "permeateFlow",
  "drainFlow",
  "permeateTds",
  "deliveredTds",
  "tankFullPressure",
  "drawnVolume",
  "tankAfterPressure",
  "airCharge",
  "waterMeter",
  "hardness",
] as const;

const number = fc.oneof(
  fc.constantFrom(0, -1, 1e-9, 1e9, Number.NaN, Number.POSITIVE_INFINITY),
  fc.double({ min: 0, max: 500, noNaN: true }),
);
const typed: fc.Arbitrary<Typed> = fc.tuple(
  number,
  fc.constantFrom(
    "psi",
    "bar",
    "kPa",
    "ppm",
    "mg/L",
    "°C",
    "°F",
    "s",
    "mL/min",
    "L",
    "m³",
    "gpg",
    "µS/cm",
    "",
    "furlong",
  ),
  fc.record(
    { volumeL: fc.constantFrom(0, 0.5, 1), notDetected: fc.boolean(), doubtful: fc.boolean() },
    { requiredKeys: [] },
  ),
);
const readings = fc.dictionary(fc.constantFrom(...SLOTS), typed);
const files = fc.constantFrom(ordinaryVisit(), tasteComplaint(), drainAllNight());

/** Every number anywhere in a judgement is finite. */
function notFinite(value: unknown, path = ""): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path}=${value}`];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([name, one]) => notFinite(one, `${path}.${name}`));
}

it("judges any partial or absurd visit without throwing and without a number that is none", () => {
  fc.assert(
    fc.property(files, readings, readings, readings, (file, earlier, asFound, asLeftTyped) => {
      const visits = [
        ...file.visits.slice(0, 1),
        visitOf("earlier", "annual", "2026-01-01", earlier),
        visitOf("today", "annual", "2026-11-25", asFound, { asLeftTyped }),
      ];
      expect(notFinite(assess({ ...file, visits }, "today", context))).toEqual([]);
    }),
    { numRuns: 1500, seed: 20261125 },
  );
});

it("judges real readings with any of them absent, and judges them the same twice", () => {
  fc.assert(
    fc.property(files, fc.subarray([...SLOTS]), (file, absent) => {
      const visits = file.visits.map((visit) => {
        const asFound = Object.fromEntries(
          Object.entries(visit.readings.asFound).filter(
            ([slot]) => !absent.includes(slot as (typeof SLOTS)[number]),
          ),
        );
        return { ...visit, readings: { ...visit.readings, asFound } };
      });
      const once = assess({ ...file, visits }, "today", context);
      expect(notFinite(once)).toEqual([]);
      expect(assess({ ...file, visits }, "today", context)).toEqual(once);
    }),
    { numRuns: 100, seed: 20261125 },
  );
});

it("judges a unit of which nothing is known", () => {
  const file = ordinaryVisit();
  const bare = {
    ...file,
    unit: { id: "unit" },
    appliances: [],
    parts: [],
    visits: [],
    site: { id: "" },
    point: { id: "" },
  };
  const judged = assess(bare, "nowhere", context);
  expect(notFinite(judged)).toEqual([]);
  expect(judged.toRead.length).toBeGreaterThan(0);
});

it("judges a visit being typed as it judges the same records come fresh from a file: nothing remembered shows", () => {
  fc.assert(
    fc.property(
      files,
      fc.array(fc.tuple(fc.constantFrom(...SLOTS), typed), { maxLength: 6 }),
      (file, keys) => {
        let visits = file.visits;
        for (const [slot, one] of keys) {
          const last = visits.at(-1)!;
          const more = visitOf("typed", "annual", "2026-11-25", { [slot]: one }).readings.asFound;
          visits = [
            ...visits.slice(0, -1),
            { ...last, readings: { ...last.readings, asFound: { ...last.readings.asFound, ...more } } },
          ];
          const now = { ...file, visits };
          const judged = assess(now, last.id, context);
          expect(assess(structuredClone(now), last.id, context)).toEqual(judged);
        }
      },
    ),
    { numRuns: 60, seed: 20261125 },
  );
});
