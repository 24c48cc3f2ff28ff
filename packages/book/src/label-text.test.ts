import { expect, it } from "vitest";
import { labelText, lotAndSerial } from "./label-text.ts";

/** Form of the strings: GS1 General Specifications, application identifiers 01, 10, 17, 21 (from memory, unverified). */
it.each([
  ["(01)09506000134352(17)271231(10)AB-123(21)S 9", { lot: "AB-123", serial: "S 9" }],
  ["01095060001343521727123110AB-123\u001d21S9", { lot: "AB-123", serial: "S9" }],
  ["]d2010950600013435221S9\u001d10AB-123", { lot: "AB-123", serial: "S9" }],
  ["10AB-123\u001d21S9", { lot: "AB-123", serial: "S9" }],
])("reads lot and serial number out of %j", (text, said) => {
  expect(labelText(text)).toEqual({ text, ...said });
});

it.each(["C-410", "10-2026-7", "210045", "0109506000", "https://maker.example/01/095", "", "4006381333931"])(
  "leaves %j whole: it is no element string",
  (text) => {
    expect(labelText(text)).toEqual({ text });
  },
);

it.each([
  [
    { text: "x", lot: "L2" },
    { lot: "L2", serial: "S1" },
  ],
  [
    { text: "x", serial: "S2" },
    { lot: "L1", serial: "S2" },
  ],
  [{ text: "5012345678900" }, { lot: "5012345678900", serial: "S1" }],
])("what a label does not name stays, and a code that names neither is the lot: %j", (read, said) => {
  expect(lotAndSerial(read, { lot: "L1", serial: "S1" })).toEqual(said);
  expect(lotAndSerial({ text: "only" }, {})).toEqual({ lot: "only" });
});
