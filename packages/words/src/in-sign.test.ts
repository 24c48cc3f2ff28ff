import { expect, it } from "vitest";
import { inSign } from "./in-sign.ts";

it.each([
  ["51.6", ",", "51,6"],
  ["51,6", ".", "51.6"],
  ["51,6", ",", "51,6"],
  ["300", ",", "300"],
  ["<0.1", ",", "<0,1"],
] as const)("%s with the sign %s reads %s", (typed, sign, shown) => {
  expect(inSign(typed, sign)).toBe(shown);
});
