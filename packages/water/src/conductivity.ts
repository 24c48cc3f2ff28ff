import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import type { ConservedWater } from "./analysis.ts";
import { speciateConserved } from "./speciate.ts";
import type { SpeciesId, Water } from "./water.ts";

/** a, b, c of λ0; p, q, r of A; B (t in °C, mS/cm per mol/kg). */
type Coefficients = readonly [number, number, number, number, number, number, number];

const MCCLESKEY: readonly (readonly [SpeciesId, Coefficients])[] = [
  ["K", [0.003046, 1.261, 40.7, 0.00535, 0.9316, 22.59, 1.5]],
  ["Na", [0.003763, 0.877, 26.23, 0.00027, 1.141, 32.07, 1.7]],
  ["Ca", [0.009645, 1.984, 62.28, 0.03174, 2.334, 132.3, 2.8]],
  ["Mg", [0.01068, 1.695, 57.16, 0.02453, 1.915, 80.5, 2.1]],
  ["Cl", [0.003817, 1.337, 40.99, 0.00613, 0.9469, 22.01, 1.5]],
  ["SO4", [0.01037, 2.838, 82.37, 0.03324, 5.889, 193.5, 2.6]],
  ["NO3", [0.001925, 1.214, 39.9, 0.00118, 0.5045, 23.31, 0.1]],
  ["HCO3", [0.000614, 0.9048, 21.14, -0.00503, 0.8957, 10.97, 0.1]],
  ["CO3", [-0.000326, 2.998, 64.03, -0.00181, 5.542, 120.2, 2.3]],
  ["H", [0.01414, 5.355, 224.2, 0.00918, 1.842, 39.23, 0.3]],
  ["F", [0.002764, 1.087, 26.66, 0.00178, 0.6202, 19.34, 0.5]],
  ["OH", [0.003396, 2.925, 121.3, 0.00933, 0.1086, 35.9, 0.01]],
];

/** Limiting conductivity λ0 of an ion, mS/cm per mol/kg, or 0 for what McCleskey's table does not hold. */
export function limitingConductivity(ion: SpeciesId, temperatureC: number): number {
  const found = MCCLESKEY.find(([id]) => id === ion)?.[1];
  return found ? (found[0] * temperatureC + found[1]) * temperatureC + found[2] : 0;
}

/** Conductivity of given free ions, µS/cm; the sum that `conductivity` and the completion share. */
export function conductivityOfIons(
  molality: Readonly<Partial<Record<SpeciesId, number>>>,
  ionicStrengthMolPerKg: number,
  temperatureC: number,
): number {
  const t = temperatureC;
  const root = Math.sqrt(ionicStrengthMolPerKg);
  let sum = 0;
  for (let i = 0; i < MCCLESKEY.length; i++) {
    const [id, of] = MCCLESKEY[i]!;
    const limiting = (of[0] * t + of[1]) * t + of[2];
    const slope = (of[3] * t + of[4]) * t + of[5];
    sum += (limiting - (slope * root) / (1 + of[6] * root)) * (molality[id] ?? 0);
  }
  return sum * 1000;
}

/**
 * Electrical conductivity of a water at its own temperature, µS/cm: κ = Σ λ_i m_i over the free ions,
 * λ = λ0(t) − A(t) √I/(1 + B √I).
 *
 * Source: McCleskey et al. 2012, Table 1, as transcribed in two public repositories (signs of HCO3 and CO3 unconfirmed).
 * Range: 0–95 °C, 0.0004–0.7 mol/kg.
 * Error: about 1 % for a known composition (0.01 mol/kg KCl reads 1.1 % high).
 */
export function conductivity(water: Water): number {
  return conductivityOfIons(water.molality, water.ionicStrengthMolPerKg, water.temperatureC);
}

/** Conductivity after bringing the water, closed and with nothing precipitated, to 25 °C, µS/cm. */
export function conductivityAt25(water: ConservedWater): Outcome<number> {
  return mapOutcome(speciateConserved({ ...water, temperatureC: 25 }), (at25) => known(conductivity(at25)));
}
