import { known } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import { all, count, mapReader, notNegative, number, optional, positive, text, word } from "./reader.ts";
import { rowCommand } from "./row-runner.ts";
import { unitVerbs } from "./unit.ts";
import { waterVerbs } from "./water.ts";

describe("one cell", () => {
  it.each([
    ["1e-5", 0.00001],
    [" 7,5 ", 7.5],
    ["-3", -3],
    ["0", 0],
  ])("%j is %d", (cell, value) => {
    expect(number("x").read({ x: cell })).toEqual({ kind: "known", value });
  });

  it.each([
    [number("x"), "abc", "not-a-number"],
    [optional("x"), "12 mg", "not-a-number"],
    [optional("x"), "NaN", "not-a-number"],
    [number("x"), "Infinity", "not-a-number"],
    [number("x"), "0x10", "not-a-number"],
    [positive("x"), "0", "not-positive"],
    [notNegative("x"), "-0.1", "below-zero"],
    [count("x"), "1.5", "not-a-count"],
    [word("x", ["series", "parallel"]), "paralel", "word-unknown"],
  ] as const)("what it is not is refused by column and text", (reader, cell, code) => {
    const outcome = reader.read({ x: cell });
    expect(outcome).toMatchObject({ kind: "refused", code, detail: { name: "x" } });
  });

  it("blank: missing, or what stands in for it", () => {
    expect(number("x").read({ x: "  " })).toEqual({ kind: "missing", missing: ["x"] });
    expect(number("x", 5).read({})).toEqual(known(5));
    expect(optional("x").read({})).toEqual(known(undefined));
    expect(text("x").read({})).toEqual(known(""));
    expect(word("x", ["series", "parallel"], "series").read({})).toEqual(known("series"));
    expect(word("x", ["Series"]).read({ x: "series" })).toEqual(known("Series"));
  });
});

it("several cells: all that is missing is named at once, each column once", () => {
  const pair = all({ a: number("a"), again: number("a"), b: number("b"), c: optional("c") });
  expect([pair.needs, pair.may]).toEqual([["a", "b"], ["c"]]);
  expect(pair.read({ c: "1" })).toEqual({ kind: "missing", missing: ["a", "b"] });
  expect(mapReader(pair, ({ a, b }) => known(a + b)).read({ a: "1", b: "2" })).toEqual(known(3));
});

describe("a cell that holds no number is never passed over", () => {
  const suits = {
    appliance: "oven",
    use: "steam",
    T_C: "15",
    feed_pH: "7.5",
    feed_Alk_CaCO3_mg: "140",
    perm_pH: "6.1",
    perm_Alk_CaCO3_mg: "8",
  };
  it.each(["limit_Cl_mg", "hottest_C", "feed_chlorine_mg", "remineraliser_approach", "steel", "copper"])(
    "water suits: %s",
    (column) => {
      const outcome = waterVerbs["water suits"]!.row({ ...suits, [column]: "thirty" });
      expect(outcome).toMatchObject({ kind: "refused", detail: { name: column } });
    },
  );
});

it("every row verb names in its help what it reads, and names a missing column by a name it lists", () => {
  for (const [name, verb] of Object.entries({ ...unitVerbs, ...waterVerbs })) {
    const help = rowCommand(name, verb, []).notes?.join(" ");
    const outcome = verb.row({});
    expect(outcome.kind, name).toBe("missing");
    if (outcome.kind === "missing") for (const column of outcome.missing) expect(help).toContain(column);
  }
});
