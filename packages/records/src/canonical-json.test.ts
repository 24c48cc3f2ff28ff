import { expect, test } from "vitest";
import { canonicalJson } from "./canonical-json.ts";

test("RFC 8785 section 3.2.2 and 3.2.3: the sample object", () => {
  const sample = {
    // biome-ignore lint/correctness/noPrecisionLoss: the digits of the published sample
    numbers: [333333333.33333329, 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
    string: "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"/",
    literals: [null, true, false],
  };
  expect(canonicalJson(sample)).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
      '"string":"\u20ac$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
});

test("RFC 8785 section 3.2.3: keys sort by UTF-16 code units", () => {
  const keys = ["\u20ac", "\r", "\ufb33", "1", "\ud83d\ude00", "\u0080", "\u00f6"];
  const sorted = Object.keys(JSON.parse(canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])))));
  const expected = ["\r", "1", "\u0080", "\u00f6", "\u20ac", "\ud83d\ude00", "\ufb33"];
  expect(new Set(sorted)).toEqual(new Set(expected));
  const text = canonicalJson(Object.fromEntries(keys.map((key) => [key, 0])));
  const places = expected.map((key) => text.indexOf(JSON.stringify(key)));
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test("RFC 8785 section 3.2.2.3 and appendix B: no NaN, no infinity, minus zero is zero", () => {
  expect(() => canonicalJson(Number.NaN)).toThrow();
  expect(() => canonicalJson(Number.POSITIVE_INFINITY)).toThrow();
  expect(canonicalJson(-0)).toBe("0");
  expect(canonicalJson(5e-324)).toBe("5e-324");
});

test("RFC 8785 section 3.2.2.2: a lone surrogate is an error", () => {
  expect(() => canonicalJson("\ud800")).toThrow();
});
