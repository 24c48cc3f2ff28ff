import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { LABORATORY_UNCERTAINTY } from "./complete.ts";
import { conductivityAt25 } from "./conductivity.ts";
import { judge, READINGS, type ReadingName, TARGETS, truthOf } from "./internal/left-out.ts";
import { watersFromRows } from "./prior.ts";
import { speciate } from "./speciate.ts";

/**
 * Truth from outside the project and from outside the prior: lakes of the United States (National Lakes Assessment 2022,
 * U.S. Environmental Protection Agency) and boreholes of Malawi (openwashdata, CC BY 4.0). See `reference/other-waters`.
 */
const WATERS = watersFromRows(
  readFileSync(fileURLToPath(new URL("../../../reference/other-waters/data.csv", import.meta.url)), "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((row) => row.slice(row.indexOf(",") + 1))
    .join("\n"),
);

const METERS = ["conductivity", "pH", "temperature", "hardness"] as const;
const CONDITIONS: Readonly<Record<string, readonly ReadingName[]>> = {
  "meters and hardness": METERS,
  "alkalinity too": [...METERS, "alkalinity"],
  "everything a technician reads": READINGS,
};

/**
 * Lakes fed by snow and rain hold less chloride than any groundwater of the prior; with nothing but meters and hardness
 * the interval of one lake in four begins above it.
 */
const LEAST_COVERED: Readonly<Record<string, number>> = { "EPA-lakes, meters and hardness, Cl": 0.7 };

const JUDGED = ["EPA-lakes", "Malawi-boreholes"].flatMap((source) => {
  const held = WATERS.filter((water) => water.source === source);
  return Object.entries(CONDITIONS).flatMap(([condition, given]) => {
    const judged = judge(held, given);
    return TARGETS.filter((target) => target !== "Cl" || !given.includes("chloride")).map((target) => ({
      name: `${source}, ${condition}, ${target}`,
      rows: held.length,
      covered: judged[target].covered,
    }));
  });
});

describe("completion of waters that the prior has not seen", () => {
  it.each(JUDGED)("covers nine in ten of $name", ({ name, rows, covered }) => {
    const half = 2.576 * Math.sqrt((0.9 * 0.1) / rows);
    expect(covered).toBeGreaterThanOrEqual(LEAST_COVERED[name] ?? 0.9 - half);
    expect(covered).toBeLessThanOrEqual(0.9 + half);
  });
  it("covers nine in ten of everything told of them, and not much more", () => {
    const rows = JUDGED.reduce((sum, one) => sum + one.rows, 0);
    const inside = JUDGED.reduce((sum, one) => sum + one.rows * one.covered, 0);
    expect(inside / rows).toBeGreaterThanOrEqual(0.9);
    expect(inside / rows).toBeLessThanOrEqual(0.95);
  });
});

it("computes the conductivity that was measured, as closely as completions count with", () => {
  const misses = WATERS.map((water) => {
    const solved = speciate({ ...truthOf(water), temperatureC: 25 });
    const computed = solved.kind === "known" ? conductivityAt25(solved.value) : solved;
    return computed.kind === "known" ? Math.log(water.ec25UsPerCm / computed.value) : Number.NaN;
  });
  const rms = Math.sqrt(misses.reduce((sum, miss) => sum + miss ** 2, 0) / misses.length);
  expect(rms).toBeLessThan(LABORATORY_UNCERTAINTY.conductivity);
  expect(Math.max(...misses.map(Math.abs))).toBeLessThan(2 * LABORATORY_UNCERTAINTY.conductivity);
});
