import fc from "fast-check";
import { expect, it } from "vitest";
import { readTable, writeTable } from "./csv.ts";

it("reads what it wrote", () => {
  const cell = fc.string({ unit: "grapheme", maxLength: 8 }).map((text) => text.trim());
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 5 }), (pairs) => {
      const rows = pairs.map(([a, b]) => ({ id: `r${a}`, note: b }));
      expect(readTable(writeTable(["id", "note"], rows))).toEqual({
        kind: "known",
        value: { columns: ["id", "note"], rows },
      });
    }),
  );
});

it.each([
  ["", "empty-table"],
  ["a,a\n1,2\n", "column-twice"],
  ["a;b\n1,2;3\n", "not-commas"],
  ['a,b\n"1,2\n', "unclosed-quote"],
  ["a,b\n1,2,3\n", "row-too-long"],
])("%j is refused as %s", (text, code) => {
  expect(readTable(text)).toMatchObject({ kind: "refused", code });
});
