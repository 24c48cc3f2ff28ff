import { expect, it } from "vitest";
import { procedureOf } from "./index.ts";

const ids = (task: string) => procedureOf(task).map((step) => step.id);
const before = (task: string, first: string, second: string) =>
  expect(ids(task).indexOf(first)).toBeLessThan(ids(task).indexOf(second));

it("bleach comes after element and carbon are out, and the element goes back after a strip reads zero (common practice, no source)", () => {
  before("sanitise", "partsOut", "dose");
  before("sanitise", "contact", "rinse");
  before("sanitise", "stripZero", "partsIn");
  before("sanitise", "partsIn", "release");
});

it("no housing is opened and no tank lifted before pressure is at zero (29 CFR 1910.147(d)(5)(i): stored energy relieved)", () => {
  for (const task of [
    "sanitise",
    "replace:element",
    "replace:carbon",
    "replace:sediment",
    "replace:tank",
    "remove",
  ]) {
    expect(ids(task)).toContain("toZero");
    expect(ids(task).indexOf("toZero")).toBe(1);
    expect(ids(task)[0]).toBe("hold");
  }
  before("replace:tank", "drainTank", "tankOut");
  before("remove", "drainTank", "takeOff");
});

it("new carbon runs to drain before the line to the element is put back (common practice, no source)", () => {
  before("rinseCarbon", "carbonToDrain", "lineBack");
  before("rinsePreservative", "lineBack", "elementToWaste");
  expect(ids("replace:carbon")).not.toContain("slowOn");
});

it("what has no procedure says so", () => {
  expect(procedureOf("findBackflow")).toEqual([]);
  expect(procedureOf("replace:uvLamp")).toEqual([]);
});

it("where hands can come to harm or do harm the caution stands at the step (trade practice, no source)", () => {
  const at = (task: string, id: string) => procedureOf(task).find((one) => one.id === id)?.cautions;
  expect(at("sanitise", "dose")).toContain("workingAlone");
  expect(at("replace:tank", "tankOut")).toContain("workingAlone");
  expect(at("sanitise", "fillDosed")).toContain("backflowLicensed");
  expect(at("remove", "capLines")).toContain("backflowLicensed");
  expect(at("replace:element", "slowOn")).toContain("reducingValve");
  for (const [task, last] of [
    ["sanitise", "release"],
    ["restart", "iceOut"],
    ["rinsePreservative", "firstTank"],
  ] as const)
    expect(at(task, last)).toContain("productUse");
});
