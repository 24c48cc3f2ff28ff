import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { quantile } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import { chargeImbalancePercent } from "./analysis-quality.ts";
import { centralWater, completeWater } from "./complete.ts";
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
  it("keeps acid as it was read, and refuses more of it than the pH has", () => {
    const acid = completeWater({ pH: 5, alkalinityMgPerLCaCO3: -0.3 }, { random: random(), samples: 20 });
    expect(acid.kind === "known" && acid.value[0]!.alkalinityMgPerLCaCO3).toBe(-0.3);
    for (const readings of [{ pH: 7, alkalinityMgPerLCaCO3: -3 }, { alkalinityMgPerLCaCO3: -3 }])
      expect(completeWater(readings, { random: random() }).kind).toBe("refused");
  });
  it("refuses a reading that is none", () => {
    expect(completeWater({ ec25UsPerCm: -3 }, { random: random() })).toMatchObject({ code: "not-a-reading" });
  });
  it.each([
    [
      "calcium alone is twice the hardness",
      { hardnessMgPerLCaCO3: 100, ions: { Ca: 80 } },
      expect.stringMatching(/^(Ca|hardnessMgPerLCaCO3)$/),
    ],
    [
      "500 mg/L of hardness conduct about 900 µS/cm",
      { hardnessMgPerLCaCO3: 500, ec25UsPerCm: 300 },
      "ec25UsPerCm",
    ],
    ["mS/cm typed as µS/cm", { hardnessMgPerLCaCO3: 100, ec25UsPerCm: 0.4 }, "ec25UsPerCm"],
    ["chloride above the dissolved solids", { tdsMgPerL: 200, ions: { Cl: 400 } }, "tdsMgPerL"],
    ["only silica could make up such solids", { ec25UsPerCm: 400, tdsMgPerL: 4000 }, "tdsMgPerL"],
  ])("names the reading that fits least: %s", (_, readings, reading) => {
    const refusal = { kind: "refused", code: "readings-contradict", detail: { reading } };
    expect(completeWater(readings, { random: random() })).toEqual(refusal);
    expect(centralWater(readings)).toEqual(refusal);
  });
  it.each([
    [{ pH: 2, ec25UsPerCm: 300 }, "ph-out-of-range"],
    [{ pH: 14, ec25UsPerCm: 300 }, "ph-out-of-range"],
    [{ ec25UsPerCm: 12_000 }, "too-concentrated"],
    [{ tdsMgPerL: 6000 }, "too-concentrated"],
    [{ temperatureC: 101, ec25UsPerCm: 300 }, "temperature-out-of-range"],
    [{ hardnessMgPerLCaCO3: 1e9 }, "too-concentrated"],
    [{ pH: 9.5, alkalinityMgPerLCaCO3: 0, ec25UsPerCm: 400 }, "hydroxide-exceeds-alkalinity"],
  ])("what no tap water can be is refused by name: %j", (readings, code) => {
    expect(completeWater(readings, { random: random() })).toMatchObject({ kind: "refused", code });
    expect(centralWater(readings)).toMatchObject({ kind: "refused", code });
  });
  it("nothing found of anything is no contradiction", () => {
    const none = { Ca: 0, Mg: 0, Na: 0, K: 0, Cl: 0, SO4: 0, NO3: 0, F: 0, SiO2: 0 };
    const readings = {
      pH: 7,
      ec25UsPerCm: 0,
      tdsMgPerL: 0,
      hardnessMgPerLCaCO3: 0,
      alkalinityMgPerLCaCO3: 0,
    };
    expect(completeWater({ ...readings, ions: none }, { random: random() }).kind).toBe("known");
  });
  it("no alkalinity stays none where the pH allows it, and is hardly any where it does not", () => {
    const at = (pH: number) => {
      const outcome = completeWater(
        { pH, ec25UsPerCm: 20, alkalinityMgPerLCaCO3: 0 },
        { random: random(), samples: 50 },
      );
      if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
      return outcome.value.map((water) => water.alkalinityMgPerLCaCO3);
    };
    expect(at(5.5).every((alkalinity) => alkalinity === 0)).toBe(true);
    const basic = at(7.5);
    /** Hydroxide alone at pH 7.5 is 0.016 mg/L as CaCO3 (10^(7.5 − 14) eq/L); kits step by 1 mg/L or more (common practice). */
    expect(Math.min(...basic)).toBeGreaterThan(0.005);
    expect(Math.max(...basic)).toBeLessThan(0.5);
  });
  /** 0.5: five standard uncertainties of the reading; a hundredth of the waters in hand is so far that the prior still pulls. */
  it.each([1, 10, 300, 5000])(
    "samples hold the solids that were read, and no charge: %d mg/L",
    (tdsMgPerL) => {
      const outcome = completeWater({ tdsMgPerL, pH: 6.5, temperatureC: 20 }, { random: random() });
      if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
      const solids = outcome.value.map(({ ions, alkalinityMgPerLCaCO3: alkalinity }) =>
        Object.values(ions).reduce((sum, mg) => sum + mg, (alkalinity / 50.05) * 61.017 * 0.4917),
      );
      const imbalance = outcome.value.map(chargeImbalancePercent).map(Math.abs);
      for (const share of [0.05, 0.5, 0.95])
        expect(Math.abs(Math.log(quantile(solids, share) / tdsMgPerL))).toBeLessThan(0.5);
      expect(quantile(imbalance, 0.95)).toBeLessThan(8);
    },
  );
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
