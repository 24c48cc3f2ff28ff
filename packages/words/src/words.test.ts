import { describe, expect, it } from "vitest";
import { cautionsOf } from "../../assessment/src/tasks.ts";
import { en } from "./index.ts";

describe("cautions", () => {
  const tasks = [
    "replace:sediment",
    "replace:carbon",
    "replace:element",
    "replace:tank",
    "replace:uvLamp",
    "sanitise",
    "setAirCharge",
    "discardTank",
  ];
  it.each(tasks)("every caution that stands at %s has its sentence", (task) => {
    for (const id of cautionsOf(task)) expect(en.caution(id)).not.toMatch(/^Local code and/);
  });
});

it("names what is missing", () => {
  expect(en.missing({ kind: "missing", missing: ["afterFilterPressure"] })).toBe(
    "cannot tell, because after filters is missing",
  );
});

it("promises and certifies nothing", () => {
  expect(`${en.doesNotTestFor} ${en.localCode}`).not.toMatch(/certif|conform|guarantee|safe to drink/i);
});
