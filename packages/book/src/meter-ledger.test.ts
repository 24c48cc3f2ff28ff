import {
  type Book,
  bookOf,
  type Change,
  EMPTY_STATE,
  fold,
  NO_STAMP,
  nextStamp,
  SCHEMA,
} from "@tapside/records";
import { expect, it } from "vitest";
import { meterLedger } from "./meter-ledger.ts";

interface Read {
  readonly unit: string;
  readonly on: string;
  readonly value: number;
  readonly by: string;
}

function book(
  reads: readonly Read[],
  checks: readonly (readonly [read: number, standard: number])[] = [],
): Book {
  let at = NO_STAMP as string;
  const change = (kind: string, record: string, fields: Change["fields"]): Change => {
    at = nextStamp(at, 1000);
    return { id: `${kind}${record}`, record, kind, fields, at, device: "d", schema: SCHEMA };
  };
  return bookOf(
    fold(EMPTY_STATE, [
      ...["a", "b", "c", "d", "e", "f"].flatMap((id) => [
        change("site", `s-${id}`, { name: id, waterSource: "Larkmoor town" }),
        change("point", `p-${id}`, { site: `s-${id}` }),
        change("unit", id, { point: `p-${id}`, name: "Unit 1" }),
      ]),
      ...reads.map(({ unit, on, value, by }, i) =>
        change("visit", `v${i}`, {
          unit,
          startedAt: `${on}T08:00:00Z`,
          "reading:asFound:feedTds": {
            raw: String(value),
            value,
            unit: "µS/cm",
            port: "feed",
            instrument: by,
            at: `${on}T08:00:00Z`,
          },
        }),
      ),
      ...checks.map(([read, standard], i) =>
        change("meterCheck", `m${i}`, {
          instrument: "mine",
          at: `2026-11-0${i + 1}T06:00:00Z`,
          read,
          standard,
          unit: "µS/cm",
        }),
      ),
    ]),
  );
}

/** The trade's case: a colleague's meter 6 % off against five others on the same water is his meter (trade judgement, no source). */
const fiveKitchens = (factor: number): readonly Read[] =>
  ["a", "b", "c", "d", "e"].flatMap((unit, i) => [
    { unit, on: `2026-11-1${i}`, value: 400 * factor, by: "mine" },
    ...["b", "c", "d", "e", "f"]
      .filter((other) => other !== unit)
      .map((other) => ({ unit: other, on: `2026-11-0${i + 1}`, value: 400, by: "other" })),
    { unit: "f", on: `2026-11-1${i}`, value: 400, by: "other" },
  ]);

it("a meter 6 % off against five others reads high; one that reads what they read agrees", () => {
  expect(meterLedger(book(fiveKitchens(1.06)), "mine").said).toBe("high");
  expect(meterLedger(book(fiveKitchens(0.92)), "mine").said).toBe("low");
  expect(meterLedger(book(fiveKitchens(1)), "mine")).toMatchObject({ said: "agrees", off: { percent: 0 } });
});

it("one kitchen whose water is another after all does not speak against the meter", () => {
  const other = fiveKitchens(1).map((one) => (one.unit === "a" ? { ...one, value: 100 } : one));
  expect(meterLedger(book(other), "mine").said).toBe("agrees");
});

it("is not held against its own readings, nor judged by fewer than three", () => {
  const own = [
    { unit: "a", on: "2026-11-10", value: 400, by: "mine" },
    { unit: "b", on: "2026-11-10", value: 500, by: "mine" },
  ];
  expect(meterLedger(book(own), "mine")).toEqual({ lines: [], said: "cannotTell" });
  const beside = [...own, { unit: "c", on: "2026-11-11", value: 500, by: "other" }];
  const { lines, said } = meterLedger(book(beside), "mine");
  expect(said).toBe("cannotTell");
  expect(lines.map((line) => line.offPercent)).toEqual([-20, 0]);
});

it("checks in a standard stand in it by their day, as percent of the standard", () => {
  const { lines } = meterLedger(
    book(
      [],
      [
        [1413, 1413],
        [1342, 1413],
      ],
    ),
    "mine",
  );
  expect(lines.map(({ kind, on, offPercent }) => [kind, on, offPercent.toFixed(1)])).toEqual([
    ["check", "2026-11-01", "0.0"],
    ["check", "2026-11-02", "-5.0"],
  ]);
});
