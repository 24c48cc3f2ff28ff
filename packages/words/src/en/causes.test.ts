import { expect, it } from "vitest";
import { causesEn } from "./causes.ts";

const { signText } = causesEn;

// Source: NIST Special Publication 811, Appendix B.8: 1 psi = 6.894757 kPa.
it("a pressure is shown in psi with three figures", () => {
  expect(signText("staticPressure", 6.894757 * 60)).toBe("60 psi");
});

it("a flow in litres an hour is shown a minute", () => {
  expect(signText("drainFlow", 45)).toBe("0.75 L/min");
});

it("a look is said, not numbered", () => {
  expect([signText("oRingBad", 1), signText("oRingBad", 0)]).toEqual(["Seen", "Not seen"]);
});
