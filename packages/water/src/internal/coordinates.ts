import { CACO3_MG_PER_MEQ, CHARGE, MOLAR_MASS } from "../analysis.ts";

/** Coordinates of a water in the prior: ln meq/L of each ion and of alkalinity, ln mg/L of silica, pH, °C. */
export const COORDINATES = [
  "Ca",
  "Mg",
  "Na",
  "K",
  "Alk",
  "Cl",
  "SO4",
  "NO3",
  "F",
  "SiO2",
  "pH",
  "temperatureC",
] as const;
export type CoordinateId = (typeof COORDINATES)[number];
export const DIMENSIONS = COORDINATES.length;

/** mg/L in one unit of the coordinate: equivalents for ions, mg for silica. */
export const MG_PER_UNIT: readonly number[] = COORDINATES.map((id) => {
  if (id === "Alk") return CACO3_MG_PER_MEQ;
  if (id === "SiO2" || id === "pH" || id === "temperatureC") return 1;
  return MOLAR_MASS[id] / Math.abs(CHARGE[id]);
});

/** Below this a reported concentration says only "little", in units of the coordinate. */
const FLOOR = 0.0005;

/** The least of a quantity that says more than "little"; pH and temperature always do. */
export const leastOf = (id: CoordinateId): number =>
  id === "pH" || id === "temperatureC"
    ? Number.NEGATIVE_INFINITY
    : FLOOR * MG_PER_UNIT[COORDINATES.indexOf(id)]!;

/** One coordinate of an analysis, or undefined. */
export function coordinate(id: CoordinateId, value: number | undefined): number | undefined {
  if (value === undefined) return undefined;
  if (id === "pH" || id === "temperatureC") return value;
  return Math.log(Math.max(value / MG_PER_UNIT[COORDINATES.indexOf(id)]!, FLOOR));
}
