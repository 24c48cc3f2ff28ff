import { expect, it } from "vitest";
import { convertTdsScale, ec25FromTds, tdsOnScale } from "./tds-scale.ts";

/** Values of two instrument manuals that agree (azmanual.top 404644, p. 43): `reference/water-checks`, C31–C34. */
it.each([
  ["NaCl", 702.1, 1413],
  ["KCl", 40.38, 84],
  ["442", 300, 447],
] as const)("reads the %s table backwards: %d ppm is %d µS/cm", (scale, ppm, ec) => {
  const outcome = ec25FromTds(ppm, scale);
  expect(outcome.kind === "known" && Math.abs(outcome.value.value / ec - 1)).toBeLessThan(0.001);
});

it("turns a reading on one scale into another's", () => {
  const outcome = convertTdsScale(1000, "442", "NaCl");
  expect(outcome.kind === "known" && Math.abs(outcome.value.value - 702.1)).toBeLessThan(0.8);
});

it("comes back to where it started anywhere, and says when it left the table", () => {
  for (const ec of [0.5, 5, 23, 60, 200, 1000, 5000, 20000]) {
    const shown = tdsOnScale(ec, "NaCl");
    if (shown.kind !== "known") throw new Error(shown.kind);
    const back = ec25FromTds(shown.value.value, "NaCl");
    expect(back.kind === "known" && Math.abs(back.value.value / ec - 1)).toBeLessThan(1e-6);
    expect(shown.value.withinTable).toBe(ec >= 23 && ec <= 12880);
  }
  expect(tdsOnScale(-1, "NaCl")).toMatchObject({ kind: "refused" });
});
