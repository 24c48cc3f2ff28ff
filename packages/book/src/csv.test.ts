import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeText, readCsv, writeCsv } from "./csv.ts";

describe("tables by RFC 4180, section 2", () => {
  it.each([
    [
      "2.1: each record on a line, CRLF",
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "2.2: the last line may lack its end",
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "2.5: quotes around cells",
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "2.6: a line end inside quotes",
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ["2.7: a quote written twice", '"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
  ])("%s", (_, text, cells) => {
    expect(readCsv(text).map((line) => line.cells)).toEqual(cells);
  });
  it("what is written is read back, whatever the signs", () => {
    const cell = fc.string({ unit: "binary", maxLength: 12 }).map((text) => text.replace(/\r/g, ""));
    fc.assert(
      fc.property(fc.array(cell, { minLength: 2, maxLength: 5 }), (cells) => {
        const names = cells.map((_, i) => `c${i}`);
        const row = Object.fromEntries(cells.map((text, i) => [names[i]!, text]));
        const read = readCsv(writeCsv(names, [row]));
        if (cells.some((text) => text.trim() !== "")) expect(read[1]?.cells).toEqual(cells);
      }),
    );
  });
});

describe("tables as offices send them", () => {
  it("takes semicolons and tabs", () => {
    expect(readCsv("a;b\r\n1,5;2")[1]?.cells).toEqual(["1,5", "2"]);
    expect(readCsv("a\tb\n1\t2")[1]?.cells).toEqual(["1", "2"]);
  });
  it("counts lines as an editor does, over cells that hold line ends", () => {
    for (const end of ["\n", "\r\n", "\r"])
      expect(readCsv(["a,b", '"x', 'y",2', "3,4"].join(end)).map((line) => line.line)).toEqual([1, 2, 4]);
  });
  it("says where a quote is never closed, and does not hang", () => {
    expect(readCsv('a,b\n1,"2\n3,4\n').at(-1)).toMatchObject({ line: 2, unclosed: true });
  });
  it("reads western office text that is not UTF-8", () => {
    expect(decodeText(Uint8Array.from([0x43, 0x61, 0x66, 0xe9]))).toBe("Café");
    expect(decodeText(new TextEncoder().encode("Café"))).toBe("Café");
  });
});
