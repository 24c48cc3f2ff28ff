import { expect, it } from "vitest";
import { brier } from "./brier.ts";
import { CAUSE_IDS } from "./causes.ts";
import { frequencies } from "./frequencies.ts";
import { openBits, settledBits } from "./information.ts";
import { leastExpectedTime } from "./least-expected-time.ts";
import { chiSquareTail } from "./misfit.ts";

/** Bayes by hand: odds after an outcome of chance `chances` under each cause. */
const after = (prior: readonly number[], chances: readonly number[]) => {
  const joint = prior.map((p, i) => p * chances[i]!);
  const weight = joint.reduce((sum, p) => sum + p, 0);
  return { weight, odds: joint.map((p) => p / weight) };
};

it("a test of three causes: 1.4855 bits open, 0.4905 bits expected (worked by hand, Bayes' rule)", () => {
  const prior = [0.5, 0.3, 0.2];
  const positive = [0.9, 0.2, 0.05];
  const yes = after(prior, positive);
  const no = after(
    prior,
    positive.map((p) => 1 - p),
  );
  expect(openBits(prior)).toBeCloseTo(1.4855, 4);
  expect(yes.odds.map((p) => Number(p.toFixed(4)))).toEqual([0.8654, 0.1154, 0.0192]);
  expect(no.odds.map((p) => Number(p.toFixed(4)))).toEqual([0.1042, 0.5, 0.3958]);
  expect(settledBits(prior, [yes, no])).toBeCloseTo(0.4905, 4);
});

it("the order of least expected time is 2, 1, 3 and costs 10.0 (rule of Kalagnanam and Henrion, arXiv 1304.2362)", () => {
  const tries = [
    { name: 1, p: 0.5, minutes: 10 },
    { name: 2, p: 0.3, minutes: 2 },
    { name: 3, p: 0.2, minutes: 5 },
  ];
  const order = [...tries].sort(
    (a, b) => leastExpectedTime(a.minutes, a.p) - leastExpectedTime(b.minutes, b.p),
  );
  expect(order.map(({ name }) => name)).toEqual([2, 1, 3]);
  let left = 1;
  const cost = order.reduce((sum, { p, minutes }) => {
    const spent = left * minutes;
    left -= p;
    return sum + spent;
  }, 0);
  expect(cost).toBeCloseTo(10, 9);
});

it("Brier scores of the AMS Glossary's example: 0.7 for what came about gives 0.09, for what did not 0.49, 0.5 gives 0.25", () => {
  // Both outcomes are counted here, the glossary counts one: half of ours.
  expect(brier([0.7, 0.3], 0) / 2).toBeCloseTo(0.09, 12);
  expect(brier([0.7, 0.3], 1) / 2).toBeCloseTo(0.49, 12);
  expect(brier([0.5, 0.5], 1) / 2).toBeCloseTo(0.25, 12);
});

it("χ² tails at the 5 % and 1 % points of its table (3.841 for 1, 18.307 for 10, 37.566 for 20 degrees; any statistics table)", () => {
  // 0.005 absolute: Wilson and Hilferty's approximation is at its worst with one degree.
  expect(chiSquareTail(3.841, 1)).toBeCloseTo(0.05, 2);
  expect(chiSquareTail(18.307, 10)).toBeCloseTo(0.05, 3);
  expect(chiSquareTail(37.566, 20)).toBeCloseTo(0.01, 3);
});

it("the company's counts: the mean of a Dirichlet, (α + n)/(Σα + Σn) (textbook), and nothing found changes nothing", () => {
  const i = CAUSE_IDS.indexOf("carbonExhausted");
  const assumed = frequencies()[i]!;
  const none = { version: 1, asOf: "2026-01-01", found: {}, assumedWorth: 50 };
  expect(frequencies(none)[i]).toBeCloseTo(assumed, 12);
  const found = { ...none, found: { carbonExhausted: 30 } };
  expect(frequencies(found)[i]).toBeCloseTo((50 * assumed + 30) / 80, 12);
  expect(frequencies(found).reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 12);
});
