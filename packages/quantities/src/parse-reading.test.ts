import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseReading } from "./parse-reading.ts";

describe("a number typed in the field", () => {
  it.each(["3.5", "3,5", " 3.5 ", "+3.5", "03.5", "3.50"])("%s is 3.5", (raw) => {
    expect(parseReading(raw)).toMatchObject({ kind: "known", value: { value: 3.5 } });
  });
  it.each([
    "",
    " ",
    "1,234.5",
    "1.234,5",
    "1.2.3",
    "abc",
    "1e5",
    "--1",
    "-",
    ".",
    "1 psi",
    "NaN",
    "Infinity",
    "0x10",
    "½",
    "1/2",
    "12345678901234",
  ])("%j is refused with a reason", (raw) => {
    expect(parseReading(raw).kind).toBe("refused");
  });
  it("a typographic minus is a minus", () => {
    expect(parseReading("−4")).toMatchObject({ value: { value: -4 } });
  });
});

it("comma and point give the same value", () => {
  fc.assert(
    fc.property(fc.nat(9999), fc.nat(999), (whole, part) => {
      expect(parseReading(`${whole}.${part}`)).toEqual(parseReading(`${whole},${part}`));
    }),
  );
});

it("any text is either a finite number or a refusal", () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      const outcome = parseReading(text);
      if (outcome.kind === "known") expect(Number.isFinite(outcome.value.value)).toBe(true);
    }),
  );
});
