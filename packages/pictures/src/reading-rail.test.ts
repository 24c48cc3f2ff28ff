import { expect, it } from "vitest";
import { readingRail } from "./reading-rail.ts";

it("what was read stands at its share of the rail, and stays on the rail when far off", () => {
  const at = (value: number) =>
    readingRail({ theme: "light", low: 40, high: 60, read: { value, u: 1 } }).match(/cx="([^"]+)"/)?.[1];
  expect([at(40), at(50), at(60), at(900)]).toEqual(["10", "151", "292", "292"]);
});
