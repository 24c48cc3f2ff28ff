import { expect, it } from "vitest";
import { writtenFor } from "./written-for.ts";

const latin1 = (codePoint: number) => codePoint >= 0x20 && codePoint <= 0xff;

it.each([
  ["Łódź", "Lódz"],
  ["Škola Žižkov", "Skola Zizkov"],
  ["Großküche", "Großküche"],
  // Common romanisation of the names themselves: Щукин as in ISO 9 without its marks, Ελλάδα as Ellada.
  ["Щукин", "Sukin"],
  ["Ελλάδα", "Ellada"],
  ["Θήβα", "Thiva"],
  ["объект", "obekt"],
])("%s is written %s where only Latin-1 can be drawn", (name, text) => {
  expect(writtenFor(name, latin1)).toBe(text);
});

it("leaves what the font draws as it is, keeps lines, and gives a box for a sign without a Latin letter", () => {
  expect(writtenFor("Łódź\n東京", () => true)).toBe("Łódź\n東京");
  expect(writtenFor("a\n東京", (code) => latin1(code) || code === 0x25a1)).toBe("a\n□□");
  expect(writtenFor("東", latin1)).toBe("?");
});

it("takes a letter and its mark written apart for the one they make", () => {
  expect(writtenFor("e\u0301", latin1)).toBe("é");
});
