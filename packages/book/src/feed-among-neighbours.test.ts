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
import { feedAmongNeighbours } from "./feed-among-neighbours.ts";

interface Read {
  readonly unit: string;
  readonly on: string;
  readonly value: number;
  readonly unitOf?: string;
  readonly scale?: string;
}

/** Three kitchens on one main and one on a well, with what their feeds read. */
function kitchens(reads: readonly Read[]): Book {
  let at = NO_STAMP as string;
  const change = (kind: string, record: string, fields: Change["fields"]): Change => {
    at = nextStamp(at, 1000);
    return { id: `${kind}${record}`, record, kind, fields, at, device: "d", schema: SCHEMA };
  };
  const units = ["a", "b", "c", "well"].flatMap((id) => [
    change("site", `s-${id}`, { name: id, waterSource: id === "well" ? "own well" : "Larkmoor town " }),
    change("point", `p-${id}`, { site: `s-${id}` }),
    change("unit", id, { point: `p-${id}`, name: "Unit 1" }),
  ]);
  const visits = reads.map(({ unit, on, value, unitOf = "µS/cm", scale }, i) =>
    change("visit", `v${i}`, {
      unit,
      startedAt: `${on}T08:00:00Z`,
      "reading:asFound:feedTds": {
        raw: String(value),
        value,
        unit: unitOf,
        port: "feed",
        at: `${on}T08:00:00Z`,
        ...(scale !== undefined && { scale }),
      },
    }),
  );
  return bookOf(fold(EMPTY_STATE, [...units, ...visits]));
}

const said = (reads: readonly Read[]) => {
  const among = feedAmongNeighbours(kitchens(reads), "a");
  return among.kind === "known" ? among.value.said : among.kind;
};
const today = "2026-11-25";

/** A colleague's meter 6 % off against five others is within what pocket meters and a day allow; 40 % is not: trade practice, no source. */
it("two neighbours who agree with each other and not with this reading: it is this meter or this tap", () => {
  const two = [
    { unit: "b", on: "2026-11-18", value: 430 },
    { unit: "c", on: "2026-11-20", value: 445 },
  ];
  expect(said([...two, { unit: "a", on: today, value: 610 }])).toBe("thisOne");
  expect(said([...two, { unit: "a", on: today, value: 450 }])).toBe("same");
});

it("when all have moved together it is the water", () => {
  expect(
    said([
      { unit: "a", on: "2025-11-20", value: 430 },
      { unit: "b", on: "2026-11-18", value: 600 },
      { unit: "c", on: "2026-11-20", value: 615 },
      { unit: "a", on: today, value: 610 },
    ]),
  ).toBe("waterMoved");
});

it("one neighbour who reads otherwise cannot tell which of the two is right", () => {
  expect(
    said([
      { unit: "b", on: "2026-11-18", value: 430 },
      { unit: "a", on: today, value: 610 },
    ]),
  ).toBe("cannotTell");
});

it("a neighbour long ago, one on other water, or none says nothing", () => {
  const own = { unit: "a", on: today, value: 610 };
  expect(said([{ unit: "b", on: "2026-06-01", value: 430 }, own])).toBe("missing");
  expect(said([{ unit: "well", on: today, value: 430 }, own])).toBe("missing");
  expect(said([own])).toBe("missing");
});

it("meters of another scale are no other water: 342 ppm on the NaCl scale is 700 µS/cm (published standard solution)", () => {
  const two = [
    { unit: "b", on: today, value: 342, unitOf: "ppm", scale: "NaCl" },
    { unit: "c", on: today, value: 700 },
  ];
  expect(said([...two, { unit: "a", on: today, value: 705 }])).toBe("same");
});
