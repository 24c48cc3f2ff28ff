import fc from "fast-check";
import { expect, it } from "vitest";
import { readTable, writeTable } from "./csv.ts";
import { sentence } from "./sentence.ts";

it("reads what it wrote", () => {
  const cell = fc.string({ unit: "grapheme", maxLength: 8 }).map((text) => text.trim());
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 5 }), (pairs) => {
      const rows = pairs.map(([a, b]) => ({ id: `r${a}`, note: b }));
      expect(readTable(writeTable(["id", "note"], rows))).toEqual({
        kind: "known",
        value: { columns: ["id", "note"], rows, rowNumbers: rows.map((_, i) => i + 2) },
      });
    }),
  );
});

it("counts rows as a spreadsheet does, empty ones too, whatever ends the lines", () => {
  for (const end of ["\n", "\r\n", "\r"])
    expect(readTable(["\uFEFFa,b", "", "1,2", " , ", "3,4", ""].join(end))).toMatchObject({
      value: { columns: ["a", "b"], rows: [{ a: "1" }, { b: "4" }], rowNumbers: [3, 5] },
    });
});

it("leaves out the blank cells that a spreadsheet pads lines with", () => {
  expect(readTable("a,b,,\n1,2,,\n3,,,,\n")).toMatchObject({
    value: {
      columns: ["a", "b"],
      rows: [
        { a: "1", b: "2" },
        { a: "3", b: "" },
      ],
    },
  });
});

it.each([";", "\t"])(
  "takes %j between cells, with comma decimals, as spreadsheets elsewhere write them",
  (sign) => {
    const text = ["T_C;pH;;", "15,5;7,2;;", '"16;0";;'].join("\n").replace(/(?<!6);/g, sign);
    expect(readTable(text)).toMatchObject({
      value: {
        columns: ["T_C", "pH"],
        rows: [
          { T_C: "15,5", pH: "7,2" },
          { T_C: "16;0", pH: "" },
        ],
      },
    });
  },
);

it.each([
  ["", "empty-table"],
  ["a,a\n1,2\n", "column-twice"],
  ["a;b\n1;2;3\n", "row-too-long"],
  ['a,b\n"1,2\n', "unclosed-quote"],
  ["a,b\n1,2,3\n", "row-too-long"],
  ["\n , \n", "empty-table"],
  ["id,pH\n", "empty-table"],
])("%j is refused as %s", (text, code) => {
  const outcome = readTable(text);
  expect(outcome).toMatchObject({ kind: "refused", code });
  if (outcome.kind !== "known") expect(sentence(outcome)).not.toMatch(/undefined|NaN/);
});
