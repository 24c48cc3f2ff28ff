import { expect, test } from "vitest";
import { beforeDriving } from "./before-driving.ts";
import { drainAllNight, ordinaryVisit } from "./testing/trials.ts";

const oddsOf = async (items: readonly string[], file = ordinaryVisit()) => {
  const found = await beforeDriving(file, { at: "2026-11-26T06:00:00.000Z", items }, undefined);
  if (found.kind !== "known") throw new Error(found.kind);
  const of = (cause: string) => found.value.causes.find((one) => one.cause === cause)?.probability ?? 0;
  return { ...found.value, of };
};

test("a drain that runs speaks for valves that do not close, a smell of pool for the carbon", async () => {
  const nothing = await oddsOf([]);
  const drain = await oddsOf(["drainRuns"]);
  const smell = await oddsOf(["smellChlorine"]);
  const notClosing = ({ of }: typeof drain) => of("checkValveFailed") + of("shutOffStuckOpen");
  expect(notClosing(drain)).toBeGreaterThan(3 * notClosing(nothing));
  expect(smell.of("carbonExhausted")).toBeGreaterThan(2 * nothing.of("carbonExhausted"));
  expect(drain.parts.map(({ part }) => part)).toEqual(expect.arrayContaining(["checkValve"]));
});

test("a unit never visited has odds too: they add up to one, and more by the chance of two at once", async () => {
  const { causes } = await oddsOf(["weak"], { ...drainAllNight(), visits: [] });
  const sum = causes.reduce((total, one) => total + one.probability, 0);
  expect(sum).toBeGreaterThan(1 - 1e-9);
  expect(sum).toBeLessThan(1.5);
});
