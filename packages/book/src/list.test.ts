import { bookOf, EMPTY_STATE, fold, NO_STAMP, nextStamp, SCHEMA } from "@tapside/records";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { listEdits } from "./list-edits.ts";
import { readList } from "./list-preview.ts";

const newId = (key: string) => `id of ${key}`;

const previewOf = (csv: string) => {
  const read = readList(csv);
  if (read.kind !== "known") throw new Error(JSON.stringify(read));
  return read.value;
};

/** The book after a list was taken in. */
function taken(csv: string, before = EMPTY_STATE) {
  const { edits } = listEdits(bookOf(before), previewOf(csv), newId);
  let at = NO_STAMP;
  const changes = edits.map((edit, i) => {
    at = nextStamp(at, 1_000 + i);
    return { ...edit, id: `change ${i}`, at, device: "d", schema: SCHEMA };
  });
  return fold(before, changes);
}

const THREE_IN_A_ROOM = [
  "site,site_code,chain,place,unit,serial,permeate_L_h,tank_L,carbon_fitted_on,carbon_lot,bypass",
  "Larkmoor central kitchen,LM-01,Larkmoor meals,Back room,Left,A-1,31.8,53,2025-11-20,C77,yes",
  "Larkmoor central kitchen,LM-01,Larkmoor meals,Back room,Middle,A-2,31.8,53,2025-11-20,C77,no",
  'Larkmoor central kitchen,LM-01,Larkmoor meals,Back room,Right,A-3,"31,8",53,,,',
].join("\r\n");

describe("a list of sites and units", () => {
  it("gives one site with three identical units, each with its own place and chain of parts", () => {
    const book = bookOf(taken(THREE_IN_A_ROOM));
    expect([book.site.size, book.point.size, book.unit.size, book.part.size]).toEqual([1, 3, 3, 9]);
    expect([...book.unit.values()].map((unit) => unit.ratedPermeateLPerH)).toEqual([31.8, 31.8, 31.8]);
    expect([...book.part.values()].filter((part) => part.lot === "C77")).toHaveLength(2);
  });
  it("keeps the restrictor as found and the lines; a kind that is none and a bore in the wrong unit are refused", () => {
    const head =
      "site,unit,serial,restrictor_kind,restrictor_bore_mm,restrictor_length_m,drain_tube_length_m";
    const list = [head, 'Elm,A,1,capillary,"0,3",0.5,2', "Elm,B,2,sponge,0.3,,", "Elm,C,3,orifice,30,,"].join(
      "\n",
    );
    expect([...bookOf(taken(list)).unit.values()]).toMatchObject([
      { restrictorKind: "capillary", restrictorBoreMm: 0.3, restrictorLengthM: 0.5, drainTubeLengthM: 2 },
    ]);
    expect(previewOf(list).refused).toMatchObject([
      { line: 3, code: "row-not-a-type", detail: { column: "restrictor_kind", text: "sponge" } },
      { line: 4, code: "row-out-of-range", detail: { column: "restrictor_bore_mm", low: 0.05, high: 3 } },
    ]);
  });
  it("taken in twice changes nothing the second time", () => {
    const once = taken(THREE_IN_A_ROOM);
    const again = listEdits(bookOf(once), previewOf(THREE_IN_A_ROOM), newId);
    expect(again).toMatchObject({ edits: [], newSites: 0, newUnits: 0, knownUnits: 3 });
  });
  it("refuses bad rows with line and reason, and keeps the good ones", () => {
    const { rows, refused, unknownColumns } = previewOf(
      [
        "site,unit,serial,tank_L,fitted_on,bypass,appliance_type,colour",
        "Elm,A,1,53,2025-02-28,yes,coffee,red",
        ",B,2,,,,,",
        "Elm,C,3,much,,,,",
        "Elm,D,4,90000,,,,",
        "Elm,E,5,,2025-02-30,,,",
        "Elm,F,6,,,perhaps,,",
        "Elm,G,7,,,,toaster,",
        "Elm,H,1,,,,,",
        "Elm,a,9,,,,,",
        "Elm,I,10,,,,,,too,long",
        "Elm,J\u0000,11,,,,,",
        'Elm,"K,12',
      ].join("\n"),
    );
    expect(rows.map((row) => row.line)).toEqual([2]);
    expect(unknownColumns).toEqual(["colour"]);
    expect(refused.map(({ line, code }) => [line, code])).toEqual([
      [3, "row-without-site"],
      [4, "row-not-a-number"],
      [5, "row-out-of-range"],
      [6, "row-no-such-day"],
      [7, "row-not-yes-or-no"],
      [8, "row-not-a-type"],
      [9, "row-twice"],
      [10, "row-twice"],
      [11, "row-too-long"],
      [12, "row-unkeepable-text"],
      [13, "row-unclosed-quote"],
    ]);
  });
  it("one code for two sites is refused", () => {
    expect(previewOf("site,site_code\nElm,1\nOak,1").refused).toMatchObject([
      { line: 3, code: "row-code-taken" },
    ]);
  });
  it("a file that is no list is refused as a whole", () => {
    expect(readList("")).toMatchObject({ code: "list-empty" });
    expect(readList("a,b\n1,2")).toMatchObject({ code: "list-column-missing" });
    expect(readList("site,unit,site\n1,2,3")).toMatchObject({ code: "list-column-twice" });
  });
  it("never throws, whatever the bytes", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        readList(text);
        readList(`site,unit\n${text}`);
      }),
    );
  });
});
