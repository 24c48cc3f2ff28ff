import { expect, it } from "vitest";
import type { CauseId } from "./causes.ts";
import type { PartId } from "./repairs.ts";
import { type StopOdds, wantedOverStops } from "./wanted-over-stops.ts";

const stop = (cause: CauseId, probability: number, ...fitted: PartId[]): StopOdds => ({
  causes: [{ cause, probability }],
  fitted: new Set(fitted),
});
const odds = (stops: readonly StopOdds[], part: PartId) =>
  wantedOverStops(stops).find((one) => one.part === part)?.probability;

/** Chance of at least one in seven independent trials of 5 % each: 1 − 0.95^7 = 0.302 (binomial law). */
it("seven stops at 5 % each want one check valve with 30 %", () => {
  const seven = Array.from({ length: 7 }, () => stop("checkValveFailed", 0.05));
  expect(odds(seven, "checkValve")).toBeCloseTo(1 - 0.95 ** 7, 9);
});

it("a further stop never makes a part less wanted; one below one in ten is not worth its room", () => {
  expect(odds([stop("checkValveFailed", 0.05)], "checkValve")).toBeUndefined();
  const one = odds([stop("checkValveFailed", 0.2)], "checkValve")!;
  expect(
    odds([stop("checkValveFailed", 0.2), stop("checkValveFailed", 0.01)], "checkValve")!,
  ).toBeGreaterThan(one);
});

it("what was fitted at the visit that read it is not wanted again", () => {
  expect(odds([stop("checkValveFailed", 0.9, "checkValve")], "checkValve")).toBeUndefined();
});
