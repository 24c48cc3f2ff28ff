import { expect, it } from "vitest";
import { statementsOf } from "./shown-statements.ts";
import { matches } from "./shown-value.ts";

it.each([
  [4.0524, "4.052", true],
  [4.0531, "4.052", false],
  [{ kind: "known", value: 205.416 }, '{ kind: "known", value: 205.42 }', true],
  [{ kind: "known", value: 205.416, more: 1 }, '{ kind: "known", value: 205.42 }', false],
  ["tooClose", '"tooClose"', true],
  ["3.5", "3.5", false],
  [[1, 2.26], "[1, 2.3]", true],
  [-8.4801, "-8.480", true],
  [undefined, "0", false],
  [Number.NaN, "0", false],
] as const)("%j shown as %s: %s", (actual, shown, expected) => {
  expect(matches(actual, shown)).toBe(expected);
});

it("a statement over several lines and a constant are both checked", () => {
  expect(statementsOf("f(\n  1,\n); // => 2")).toBe('check(f(\n  1,\n), "2", "f(\\n  1,\\n);");');
  expect(statementsOf("const a = 1; // => 1")).toContain('check(a, "1"');
});
