import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Outcome } from "@tapside/quantities";
import { describe, expect, it } from "vitest";
import {
  aggressiveIndex,
  approximateCo2,
  concentrateConcentration,
  conductivity,
  convertHardness,
  debyeHuckel,
  type EquilibriumId,
  hardnessFromIons,
  heatClosed,
  type IonsMgPerL,
  langelierIndex,
  larsonBuswellC400,
  larsonSkoldIndex,
  limitingConductivity,
  linearFactor,
  logK,
  naturalWaterFactor20,
  naturalWaterFactor25,
  precipitationPotential,
  puckoriusIndex,
  puckoriusPh,
  ryznarIndex,
  type SpeciesId,
  silicaSolubility,
  simplifiedSaturationPh,
  speciate,
  speciateConserved,
  tdsOnScale,
  type Water,
} from "./index.ts";

/**
 * Looked-up values, one test a row of `reference/water-checks/data.csv`; its source column is in each test's name.
 * Numbers are typed here from the row so that a change of either side shows.
 */
const csv = readFileSync(
  fileURLToPath(new URL("../../../reference/water-checks/data.csv", import.meta.url)),
  "utf8",
);
const ROWS = csv
  .trim()
  .split(/\r?\n/)
  .slice(1)
  .map((line) => ({ id: line.slice(0, 3), line }));

function value<T>(outcome: Outcome<T>): T {
  if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
  return outcome.value;
}

const near = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected), `${actual} for ${expected}`).toBeLessThanOrEqual(tolerance + 1e-12);

const series = (
  f: (x: number) => number,
  pairs: readonly (readonly [x: number, expected: number])[],
  tolerance: (expected: number) => number,
) => {
  for (const [x, expected] of pairs) near(f(x), expected, tolerance(expected));
};

const logs = (id: EquilibriumId, pairs: readonly (readonly [number, number])[], tolerance = 0.0005) =>
  series(
    (t) => logK(id, t),
    pairs,
    () => tolerance + 0.00005,
  );

const water = (temperatureC: number, pH: number, alkalinityMgPerLCaCO3: number, ions: IonsMgPerL): Water =>
  value(speciate({ temperatureC, pH, alkalinityMgPerLCaCO3, ions }));

const O06 = {
  Ca: 103.43,
  Mg: 24.48,
  Na: 41.95,
  K: 3.87,
  Cl: 49.16,
  SO4: 57.07,
  NO3: 18.38,
  F: 0.376,
  SiO2: 12.34,
};
const O13 = {
  Ca: 69.61,
  Mg: 31.38,
  Na: 345.96,
  K: 9.87,
  Cl: 539.02,
  SO4: 81.48,
  NO3: 4.91,
  F: 0.395,
  SiO2: 11.73,
};

/** Conductivity of a potassium chloride solution, µS/cm. */
const kcl = (molPerKg: number, temperatureC: number) => {
  const totals = { Ca: 0, Mg: 0, Na: 0, K: molPerKg, Cl: molPerKg, SO4: 0, NO3: 0, F: 0, SiO2: 0 };
  return conductivity(
    value(speciateConserved({ temperatureC, totals, alkalinityEqPerKg: 0, carbonMolPerKg: 0 })),
  );
};

/** Solubility of a calcium sulfate in pure water, mol/kg. */
function solubility(solid: "gypsum" | "anhydrite", temperatureC: number): number {
  let low = 1e-4;
  let high = 0.1;
  for (let i = 0; i < 50; i++) {
    const m = 0.5 * (low + high);
    const totals = { Ca: m, Mg: 0, Na: 0, K: 0, Cl: 0, SO4: m, NO3: 0, F: 0, SiO2: 0 };
    const solved = value(
      speciateConserved({ temperatureC, totals, alkalinityEqPerKg: 0, carbonMolPerKg: 0 }),
    );
    if (solved.saturation[solid] > 0) high = m;
    else low = m;
  }
  return low;
}

function crossoverC(): number {
  let low = 40;
  let high = 70;
  for (let i = 0; i < 25; i++) {
    const t = 0.5 * (low + high);
    if (solubility("gypsum", t) < solubility("anhydrite", t)) low = t;
    else high = t;
  }
  return low;
}

const ppmFactor = (ec: number, kClPpm: number, naClPpm: number, ppm442: number) => {
  near(value(tdsOnScale(ec, "KCl")).value, kClPpm, kClPpm * 0.001);
  near(value(tdsOnScale(ec, "NaCl")).value, naClPpm, naClPpm * 0.001);
  near(value(tdsOnScale(ec, "442")).value, ppm442, ppm442 * 0.001);
};

const handbook = {
  temperatureC: 48.89,
  tdsMgPerL: 1000,
  calciumHardnessMgPerLCaCO3: 500,
  alkalinityMgPerLCaCO3: 100,
};
const tablePh = () => value(simplifiedSaturationPh(handbook, "handbook-table"));

const CHECKS: Readonly<Record<string, () => void>> = {
  C01: () => logs("calcite", [[25, -8.48]], 0.001),
  C02: () => logs("aragonite", [[25, -8.336]], 0.001),
  C03: () => logs("vaterite", [[25, -7.913]], 0.001),
  C04: () => logs("CaHCO3", [[25, 1.11]], 0.006),
  C05: () => logs("CaCO3", [[25, 3.22]], 0.006),
  C06: () =>
    logs("k1", [
      [0, -6.5786],
      [25, -6.3519],
      [60, -6.2903],
      [100, -6.4266],
    ]),
  C07: () =>
    logs("k2", [
      [0, -10.6286],
      [25, -10.3289],
      [60, -10.1438],
      [100, -10.1552],
    ]),
  C08: () =>
    logs("carbonDioxideGas", [
      [0, -1.1084],
      [25, -1.4679],
      [60, -1.784],
      [100, -1.9792],
    ]),
  C09: () =>
    logs("calcite", [
      [0, -8.3814],
      [60, -8.7588],
      [90, -9.1217],
      [100, -9.2665],
    ]),
  C10: () =>
    logs("aragonite", [
      [0, -8.218],
      [60, -8.6376],
      [90, -9.0163],
    ]),
  C11: () =>
    logs(
      "water",
      [
        [0, -14.938],
        [25, -13.995],
        [60, -13.015],
        [100, -12.238],
      ],
      0.002,
    ),
  C12: () => near(tablePh(), 6.77, 0.005),
  C13: () => near(langelierIndex(8.2, tablePh()), 1.43, 0.005),
  C14: () => near(ryznarIndex(8.2, tablePh()), 5.34, 0.005),
  C15: () => near(value(puckoriusPh(100)), 7.47, 0.005),
  C16: () => near(value(puckoriusIndex(6.77, 100)), 6.07, 0.005),
  C17: () => near(value(simplifiedSaturationPh(handbook, "formula")), 6.85, 0.001),
  C18: () => {
    const at = (temperatureC: number, tdsMgPerL: number) =>
      value(
        simplifiedSaturationPh(
          { temperatureC, tdsMgPerL, calciumHardnessMgPerLCaCO3: 10 ** 0.4, alkalinityMgPerLCaCO3: 1 },
          "formula",
        ),
      ) - 9.3;
    near(at(25, 10), 2.088, 0.005);
    near(at(82, 10), 1.09, 0.005);
    near(at(25, 320) - at(25, 10), 0.1505, 0.005);
  },
  C19: () => near(langelierIndex(9.95, 3.16 + 2.77 + 2.56), 1.46, 0.005),
  C20: () =>
    series(
      (t) => value(larsonBuswellC400(t)),
      [2.81, 2.59, 2.38, 2.22, 2.04, 1.88, 1.72, 1.59, 1.44, 1.31].map((c, i) => [i * 10, c] as const),
      () => 0.005,
    ),
  C21: () => near(value(larsonSkoldIndex(40, 62, 245)), 0.494, 0.002),
  C22: () => near(value(aggressiveIndex(8, 150, 100)), 12.18, 0.005),
  C23: () => near(value(concentrateConcentration(200, 0.75, 0)), 800, 0.1),
  C24: () => near(value(concentrateConcentration(200, 0.75, 0.05)), 770, 0.1),
  C25: () =>
    series(
      (m) => kcl(m, 25),
      [
        [0.0005, 73.9],
        [0.001, 146.9],
        [0.005, 717.5],
        [0.01, 1412],
        [0.02, 2765],
        [0.05, 6667],
        [0.1, 12890],
      ],
      (expected) => 0.01 * expected,
    ),
  C26: () =>
    series(
      (t) => kcl(0.01, t),
      [
        [0, 772.92],
        [5, 890.96],
        [10, 1013.95],
        [15, 1141.45],
        [20, 1273.03],
        [25, 1408.23],
        [30, 1546.63],
        [35, 1687.79],
        [40, 1831.27],
        [50, 2123.43],
      ],
      (expected) => 0.015 * expected,
    ),
  C27: () =>
    series(
      (t) => kcl(0.1, t),
      [
        [0, 7116.85],
        [25, 12824.6],
        [50, 19180.9],
      ],
      (expected) => 0.015 * expected,
    ),
  C28: () =>
    series(
      (t) => value(naturalWaterFactor25(t)),
      [1.918, 1.643, 1.428, 1.256, 1.116, 1, 0.903, 0.822].map((f, i) => [i * 5, f] as const),
      () => 0.001,
    ),
  C29: () => near(value(naturalWaterFactor20(10)), 1.28, 0.001),
  C30: () => near(linearFactor(10), 1.4286, 0.0001),
  C31: () => ppmFactor(1413, 744.7, 702.1, 1000),
  C32: () => ppmFactor(84, 40.38, 38.04, 50.5),
  C33: () => ppmFactor(447, 225.6, 215.5, 300),
  C34: () => ppmFactor(12880, 7447, 7230, 11367),
  C35: () => near(convertHardness(1, "gpg", "mg/L CaCO3"), 17.118, 0.001),
  C36: () => near(convertHardness(1, "dH", "mg/L CaCO3"), 17.848, 0.001),
  C37: () => {
    near(convertHardness(1, "fH", "mg/L CaCO3"), 10, 0.001);
    near(convertHardness(1, "Clark", "mg/L CaCO3"), 14.254, 0.001);
  },
  C38: () => near(hardnessFromIons(100, 30), 373.2, 0.3),
  C39: () =>
    series(
      (t) => silicaSolubility("amorphous", t),
      [
        [25, 117],
        [5, 78],
        [60, 211.7],
        [100, 363.9],
      ],
      () => 0.2,
    ),
  C40: () => {
    near(silicaSolubility("quartz", 25), 6.3, 0.1);
    near(silicaSolubility("chalcedony", 25), 16.9, 0.1);
  },
  C41: () => {
    expect(crossoverC()).toBeGreaterThanOrEqual(42);
    expect(crossoverC()).toBeLessThanOrEqual(60);
  },
  C42: () => near(crossoverC(), 54.4, 0.5),
  C43: () => near(solubility("gypsum", 25) * 1000, 15.05, 0.02 * 15.05),
  C44: () => logs("gypsum", [[25, -4.588]], 0.01),
  C45: () => near(water(25, 7.26, 310.7, O06).saturation.calcite, 0.3264, 0.01),
  C46: () => near(water(90, 7.92, 218, O13).saturation.calcite, 1.2734, 0.02),
  C47: () => {
    const cold = water(10, 7.5, 310.7, O06);
    const hot = value(heatClosed(cold, 90));
    const rise =
      value(precipitationPotential(hot)).mgPerLCaCO3 - value(precipitationPotential(cold)).mgPerLCaCO3;
    expect(rise / 100.09).toBeGreaterThan(0.17);
    expect(rise / 100.09).toBeLessThan(1.51);
  },
  C48: () => {
    const paired = water(10, 7.5, 310.7, O06);
    const inert = water(10, 7.5, 310.7, { Ca: O06.Ca, Cl: 300 });
    const effect =
      value(precipitationPotential(paired)).mgPerLCaCO3 - value(precipitationPotential(inert)).mgPerLCaCO3;
    expect(effect / 100.09).toBeLessThan(-0.006);
    expect(effect / 100.09).toBeGreaterThan(-0.173);
  },
  C49: () => {
    series(
      (t) => debyeHuckel(t).a,
      [
        [0, 0.4908],
        [25, 0.51],
        [60, 0.5459],
        [100, 0.6001],
      ],
      () => 0.002,
    );
    series(
      (t) => debyeHuckel(t).bPerAngstrom,
      [
        [0, 0.3246],
        [25, 0.3285],
        [60, 0.3345],
        [100, 0.3422],
      ],
      () => 0.002,
    );
  },
  C50: () => {
    near(debyeHuckel(25).dielectric, 78.38, 0.1);
    near(debyeHuckel(100).dielectric, 55.46, 0.1);
    near(debyeHuckel(25).densityGPerMl, 0.997, 0.0002);
    near(debyeHuckel(100).densityGPerMl, 0.95835, 0.0002);
  },
  C51: () => near(approximateCo2(7, 122), 19.5, 0.1),
  C52: () => {
    const expected: readonly (readonly [SpeciesId, number])[] = [
      ["K", 74.1],
      ["Na", 50.5],
      ["Ca", 117.9],
      ["Mg", 106.2],
      ["Cl", 76.8],
      ["SO4", 159.8],
      ["NO3", 71.5],
      ["HCO3", 44.1],
      ["CO3", 138.8],
    ];
    for (const [ion, lambda] of expected) near(limitingConductivity(ion, 25), lambda, 0.1);
  },
  C53: () => near(kcl(0.01, 25), 1423, 1),
};

describe("looked-up values", () => {
  it("has a check for every row", () => {
    expect(ROWS.map(({ id }) => id)).toEqual(Object.keys(CHECKS));
  });
  for (const { id, line } of ROWS) it(line, () => CHECKS[id]!());
});

describe("constants and tables (reference/p82)", () => {
  const read = (name: string) => {
    const text = readFileSync(
      fileURLToPath(new URL(`../../../reference/p82/${name}.csv`, import.meta.url)),
      "utf8",
    );
    const [head, ...lines] = text.trim().split(/\r?\n/);
    const columns = head!.split(",");
    return lines.map((line) =>
      Object.fromEntries(line.split(",").map((x, i) => [columns[i]!, Number(x)] as const)),
    );
  };

  it("holds the Debye–Hückel table of the file", () => {
    for (const row of read("data")) {
      const at = debyeHuckel(row.T_C!);
      near(at.a, row.DH_A!, 1e-6);
      near(at.bPerAngstrom, row.DH_B!, 1e-6);
      near(at.dielectric, row.eps!, 1e-6);
      near(at.densityGPerMl, row.rho!, 1e-6);
    }
  });

  it("agrees with the file's log K from 0 to 100 °C within 0.0015", () => {
    const same: readonly (readonly [string, EquilibriumId])[] = [
      ["lk_OH", "water"],
      ["lk_CaCO3aq", "CaCO3"],
      ["lk_MgCO3", "MgCO3"],
      ["lk_CaSO4", "CaSO4"],
      ["lk_MgSO4", "MgSO4"],
      ["lk_NaCO3", "NaCO3"],
      ["lk_NaHCO3", "NaHCO3"],
      ["lk_NaSO4", "NaSO4"],
      ["lk_KSO4", "KSO4"],
      ["lk_HSO4", "HSO4"],
      ["lk_CaOH", "CaOH"],
      ["lk_MgOH", "MgOH"],
      ["lk_H3SiO4", "H3SiO4"],
      ["lk_HF", "HF"],
      ["lk_MgF", "MgF"],
      ["calcite", "calcite"],
      ["aragonite", "aragonite"],
      ["gypsum", "gypsum"],
      ["anhydrite", "anhydrite"],
      ["fluorite", "fluorite"],
      ["SiO2a", "amorphousSilica"],
      ["chalcedony", "chalcedony"],
      ["quartz", "quartz"],
      ["CO2g", "carbonDioxideGas"],
    ];
    for (const row of read("data").filter((r) => r.T_C! <= 100)) {
      for (const [column, id] of same) near(logK(id, row.T_C!), row[column]!, 0.0015);
      near(logK("CaHCO3", row.T_C!) - logK("k2", row.T_C!), row.lk_CaHCO3!, 0.0015);
      near(logK("MgHCO3", row.T_C!) - logK("k2", row.T_C!), row.lk_MgHCO3!, 0.0015);
    }
  });

  it("dissolves gypsum and anhydrite in pure water as the file says", () => {
    for (const row of read("caso4_solubility").filter((_, i) => i % 3 === 0)) {
      near(solubility("gypsum", row.T_C!) * 1000, row.gypsum_sol_mmol_kgw!, 0.01);
      near(solubility("anhydrite", row.T_C!) * 1000, row.anhydrite_sol_mmol_kgw!, 0.01);
    }
  });
});
