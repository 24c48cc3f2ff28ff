import { expect, it } from "vitest";
import { COLOURS } from "./colours.ts";
import { squareMark } from "./square-mark.ts";
import { visitTicks } from "./visit-ticks.ts";

const filled = (svg: string) => svg.split(`fill="${COLOURS.light.ink}"`).length - 1;

it("a square is solid for what we have and hollow for what we have not", () => {
  expect([filled(squareMark(true, "light")), filled(squareMark(false, "light"))]).toEqual([1, 0]);
});

it("a visit has one tick per number, solid for each number taken", () => {
  const svg = visitTicks([true, false, true], 390, "light");
  expect([svg.split("<rect").length - 1, filled(svg)]).toEqual([3, 2]);
});
