import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convert, converted, UNITS } from "./convert.ts";

describe("published conversions", () => {
  const rows = [
    [
      "1 gpg is 17.118 mg/L as CaCO3 (64.79891 mg per 3.785412 L; published 17.12)",
      1,
      "gpg",
      "mg/L",
      17.118,
      0.001,
    ],
    ["1 German degree is 17.848 mg/L (10 mg CaO/L)", 1, "°dH", "mg/L", 17.848, 0.001],
    ["1 Clark degree is 14.254 mg/L (1 grain per imperial gallon)", 1, "°e", "mg/L", 14.254, 0.001],
    ["1 French degree is 10 mg/L", 1, "°fH", "mg/L", 10, 1e-9],
    ["5 gpg is 85 mg/L and 1 gpg 17 (SCAA brewing standard, 1–5 gpg = 17–85 mg/L)", 5, "gpg", "mg/L", 85, 1],
    ["1 mL/min is 0.3804 gpd (trade tables print 0.38)", 1, "mL/min", "gpd", 0.3804, 0.0001],
    ["1 psi is 6.894757 kPa (NIST SP 811)", 1, "psi", "kPa", 6.894757, 1e-6],
    ["1 bar is 14.50377 psi (NIST SP 811)", 1, "bar", "psi", 14.50377, 1e-5],
    ["113 °F is 45 °C", 113, "°F", "°C", 45, 1e-9],
    [
      "1 mmol/L is 100.09 mg/L (molar mass of CaCO3, IUPAC atomic weights)",
      1,
      "mmol/L",
      "mg/L",
      100.09,
      0.01,
    ],
    ["1 mmol/L is 5.608 German degrees (molar mass of CaO over 10 mg)", 1, "mmol/L", "°dH", 5.608, 0.001],
    ["1 gpm is 227.1 L/h (NIST SP 811: 6.309020 E-05 m³/s)", 1, "gpm", "L/h", 227.1247, 1e-3],
    ["1 gal is 3.785412 L (NIST SP 811)", 1, "gal", "L", 3.785412, 1e-6],
    ["1 in is 25.4 mm exactly (NIST SP 811)", 1, "in", "mm", 25.4, 1e-12],
    ["1 in is 2.54 cm exactly (NIST SP 811)", 1, "in", "cm", 2.54, 1e-12],
    ["both characters for micro are one unit", 1, "μS/cm", "µS/cm", 1, 1e-12],
  ] as const;
  it.each(rows)("%s", (_, value, from, to, expected, tolerance) => {
    expect(Math.abs(converted(value, from, to) - expected)).toBeLessThanOrEqual(tolerance);
  });
});

it("converting there and back is identity", () => {
  const names = Object.keys(UNITS);
  fc.assert(
    fc.property(
      fc.constantFrom(...names),
      fc.constantFrom(...names),
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      (a, b, x) => {
        if (UNITS[a]?.dimension !== UNITS[b]?.dimension) return;
        expect(Math.abs(converted(converted(x, a, b), b, a) - x)).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(x)),
        );
      },
    ),
  );
});

it("units of different kinds and unknown units are refused by name", () => {
  expect(convert(1, "psi", "°C")).toMatchObject({ kind: "refused", code: "units-differ-in-kind" });
  expect(convert(1, "furlong", "m")).toMatchObject({ kind: "refused", code: "unit-unknown" });
  expect(convert(1, "constructor", "toString")).toMatchObject({ kind: "refused", code: "unit-unknown" });
  expect(convert(Number.NaN, "psi", "bar")).toMatchObject({ kind: "refused", code: "not-a-finite-number" });
});
