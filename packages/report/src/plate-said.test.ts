import { messagesIn } from "@tapside/words/every-language";
import { expect, it } from "vitest";
import { plateSaid } from "./plate-said.ts";

const said = (language: "en" | "es", unit: Parameters<typeof plateSaid>[0]) =>
  plateSaid(unit, messagesIn(language));

it("names the restrictor by its kind and the lines that count, a bore nobody measured as a default", () => {
  const unit = {
    id: "u",
    restrictorKind: "capillary",
    restrictorBoreMm: 0.3,
    restrictorLengthM: 0.5,
    drainTubeLengthM: 2,
    outletTubeLengthM: 3,
    outletTubeBoreMm: 6.35,
  } as const;
  expect(said("en", unit)).toBe(
    "restrictor: capillary 0.300 mm bore, 0.500 m, drain line 2.00 m, bore 4.32 mm (default), line from the tank 3.00 m, bore 6.35 mm",
  );
  expect(said("es", unit)).toMatch(
    /^restrictor: capilar .* línea de drenaje .* \(por defecto\), línea desde el tanque/,
  );
});

it("says a measured one with its law, a rating as it stands, and nothing of what is incomplete", () => {
  const measured = { restrictorLPerH: 60, restrictorAtKPaGauge: 400 };
  expect(said("en", { id: "u", ...measured })).toBe("restrictor 60.0 L/h at 400 kPa");
  expect(said("en", { id: "u", ...measured, restrictorKind: "measured", restrictorLaw: "orifice" })).toBe(
    "restrictor measured: 60.0 L/h at 400 kPa, a hole",
  );
  expect(said("en", { id: "u", restrictorKind: "orifice" })).toBe("");
});
