import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { quantile } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import { completeWater } from "./complete.ts";
import { seededUniform } from "./internal/seeded.ts";
import { realWaters } from "./prior.ts";

const WATERS = realWaters();

describe("the prior's rows", () => {
  it("are those of reference/real-waters", () => {
    const text = readFileSync(
      fileURLToPath(new URL("../../../reference/real-waters/data.csv", import.meta.url)),
      "utf8",
    );
    const rows = text.trim().split(/\r?\n/).slice(1);
    expect(rows.length).toBe(WATERS.length);
    rows.forEach((row, i) => {
      const cells = row.split(",");
      expect(WATERS[i]!.source).toBe(cells[1]);
      expect(WATERS[i]!.values.Ca).toBe(Number(cells[5]));
      expect(WATERS[i]!.ec25UsPerCm).toBe(Number(cells[4]));
    });
  });
});

describe("completion at its edges", () => {
  const random = () => seededUniform(7);
  it("answers the same for the same seed", () => {
    const readings = { ec25UsPerCm: 400, pH: 7.5 };
    expect(completeWater(readings, { random: random(), samples: 20 })).toEqual(
      completeWater(readings, { random: random(), samples: 20 }),
    );
  });
  it("refuses a reading that is none", () => {
    expect(completeWater({ ec25UsPerCm: -3 }, { random: random() })).toMatchObject({ code: "not-a-reading" });
  });
  it("keeps what was read within its uncertainty, in permeate and in brackish water too", () => {
    for (const ec of [15, 3000]) {
      const outcome = completeWater(
        { ec25UsPerCm: ec, pH: 6.5, ions: { Cl: ec / 10 } },
        { random: random() },
      );
      expect(outcome.kind).toBe("known");
      if (outcome.kind !== "known") return;
      const chloride = quantile(
        outcome.value.map((w) => w.ions.Cl!),
        0.5,
      );
      expect(Math.abs(chloride / (ec / 10) - 1)).toBeLessThan(0.1);
    }
  });
});
