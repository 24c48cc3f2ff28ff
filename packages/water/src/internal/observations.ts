import { conductivityOfIons, limitingConductivity } from "../conductivity.ts";
import { COORDINATES, type CoordinateId, DIMENSIONS, MG_PER_UNIT } from "./coordinates.ts";

/** Something seen of a water: its value, its standard uncertainty, and how it follows from the coordinates. */
export interface Observation {
  /** Its name among the readings; "chargeBalance" is not read. */
  readonly reading: string;
  readonly value: number;
  readonly sd: number;
  /** Which of the readings it is; its chance disturbance stands in this place of a draw, whatever else was read. */
  readonly slot: number;
  /** Answers g(y) and writes its gradient. */
  readonly of: (y: Float64Array, gradient: Float64Array) => number;
}

const PLACE = Object.fromEntries(COORDINATES.map((id, i) => [id, i])) as Readonly<
  Record<CoordinateId, number>
>;
const place = (id: CoordinateId) => PLACE[id];

const SLOT = {
  chargeBalance: DIMENSIONS,
  hardness: DIMENSIONS + 1,
  tds: DIMENSIONS + 2,
  conductivity: DIMENSIONS + 3,
} as const;
/** How many kinds of readings there are. */
export const SLOTS = DIMENSIONS + 4;

/** One coordinate seen directly. */
export const seen = (id: CoordinateId, value: number, sd: number): Observation => ({
  reading: id === "Alk" ? "alkalinityMgPerLCaCO3" : id,
  value,
  sd,
  slot: place(id),
  of: (y, gradient) => {
    gradient.fill(0);
    gradient[place(id)] = 1;
    return y[place(id)]!;
  },
});

/** ln Σ w e^y over some coordinates. */
const lnSum = (y: Float64Array, weights: Float64Array, gradient: Float64Array, sign: number): number => {
  let sum = 1e-12;
  for (let i = 0; i < DIMENSIONS; i++) if (weights[i]! > 0) sum += weights[i]! * Math.exp(y[i]!);
  for (let i = 0; i < DIMENSIONS; i++)
    if (weights[i]! > 0) gradient[i]! += (sign * weights[i]! * Math.exp(y[i]!)) / sum;
  return Math.log(sum);
};

const weightsOf = (given: Partial<Record<CoordinateId, number>>) =>
  Float64Array.from(COORDINATES, (id) => given[id] ?? 0);

const sumSeen = (
  reading: string,
  value: number,
  sd: number,
  slot: number,
  weights: Float64Array,
): Observation => ({
  reading,
  value,
  sd,
  slot,
  of: (y, gradient) => {
    gradient.fill(0);
    return lnSum(y, weights, gradient, 1);
  },
});

/** Total hardness, ln of meq/L. */
export const hardnessSeen = (mgPerLCaCO3: number, sd: number): Observation =>
  sumSeen(
    "hardnessMgPerLCaCO3",
    Math.log(mgPerLCaCO3 / 50.05),
    sd,
    SLOT.hardness,
    weightsOf({ Ca: 1, Mg: 1 }),
  );

/** Dissolved solids by evaporation: sum of constituents, bicarbonate counted half. */
export const tdsSeen = (mgPerL: number, sd: number): Observation => {
  const weights = Float64Array.from(COORDINATES, (id, i) =>
    id === "pH" || id === "temperatureC" ? 0 : id === "Alk" ? 61.017 * 0.4917 : MG_PER_UNIT[i]!,
  );
  return sumSeen("tdsMgPerL", Math.log(mgPerL), sd, SLOT.tds, weights);
};

const CATIONS = weightsOf({ Ca: 1, Mg: 1, Na: 1, K: 1 });
const ANIONS = weightsOf({ Alk: 1, Cl: 1, SO4: 1, NO3: 1, F: 1 });

/** ln(cations/anions) = 0. */
export const chargeBalance = (sd: number): Observation => ({
  reading: "chargeBalance",
  value: 0,
  sd,
  slot: SLOT.chargeBalance,
  of: (y, gradient) => {
    gradient.fill(0);
    return lnSum(y, CATIONS, gradient, 1) - lnSum(y, ANIONS, gradient, -1);
  },
});

const CONDUCTING = ["Ca", "Mg", "Na", "K", "Alk", "Cl", "SO4", "NO3", "F"] as const;
const VALENCE = { Ca: 2, Mg: 2, Na: 1, K: 1, Alk: 1, Cl: 1, SO4: 2, NO3: 1, F: 1 } as const;
const LIMITING = CONDUCTING.map((id) => limitingConductivity(id === "Alk" ? "HCO3" : id, 25));

/** Association at 25 °C on the P82 basis, kg/mol: with sulfate 10^2.3 (between calcium and magnesium), bicarbonate 10^1.11, carbonate 10^3.22. */
const PAIRING = { sulfate: 200, bicarbonate: 12.9, carbonate: 1660 } as const;
/** −log K2; beyond the pH a draw far from its readings would find that more salt conducts less. */
const SECOND_DISSOCIATION = 10.33;
const MOST_PAIRING_PH = 8.5;
const MOST_PAIRED = 0.5;
const HIGHEST_DAVIES_STRENGTH = 0.5;

/** Activity coefficient of a single charge at 25 °C by Davies; of a double one its fourth power. */
function daviesCoefficient(strength: number): number {
  const i = Math.min(strength, HIGHEST_DAVIES_STRENGTH);
  const root = Math.sqrt(i);
  return 10 ** (-0.51 * (root / (1 + root) - 0.3 * i));
}

const shareFree = (pairing: number, partner: number) => 1 / (1 + pairing * partner);

/**
 * Conductivity at 25 °C, µS/cm, from the coordinates: McCleskey's ions with the pairs of calcium and magnesium with sulfate,
 * bicarbonate and carbonate taken off in one pass. Error: within 3 % of `conductivityAt25` in the real waters, 1 % in the mean.
 */
export function conductivityOfCoordinates(y: Float64Array): number {
  const molal: Partial<Record<(typeof CONDUCTING)[number], number>> = {};
  let strength = 0;
  for (const id of CONDUCTING) {
    const m = Math.exp(y[place(id)]!) / 1000 / VALENCE[id];
    molal[id] = m;
    strength += 0.5 * m * VALENCE[id] ** 2;
  }
  const divalent = molal.Ca! + molal.Mg!;
  const single = daviesCoefficient(strength);
  const double = single ** 4;
  const carbonate = single * 10 ** (Math.min(y[place("pH")]!, MOST_PAIRING_PH) - SECOND_DISSOCIATION);
  const bySulfate = shareFree(PAIRING.sulfate * double ** 2, divalent);
  const byBicarbonate = shareFree(double * (PAIRING.bicarbonate + PAIRING.carbonate * carbonate), divalent);
  const paired = molal.SO4! * (1 - bySulfate) + molal.Alk! * (1 - byBicarbonate);
  const left = 1 - Math.min(paired / Math.max(divalent, 1e-12), MOST_PAIRED);
  return conductivityOfIons(
    {
      Ca: molal.Ca! * left,
      Mg: molal.Mg! * left,
      Na: molal.Na!,
      K: molal.K!,
      Cl: molal.Cl!,
      SO4: molal.SO4! * bySulfate,
      NO3: molal.NO3!,
      F: molal.F!,
      HCO3: molal.Alk! * byBicarbonate,
    },
    Math.max(strength - 4 * molal.SO4! * (1 - bySulfate), 0),
    25,
  );
}

/** Conductivity at 25 °C, ln of µS/cm. */
export const conductivitySeen = (ec25UsPerCm: number, sd: number): Observation => ({
  reading: "ec25UsPerCm",
  value: Math.log(ec25UsPerCm),
  sd,
  slot: SLOT.conductivity,
  of: (y, gradient) => {
    gradient.fill(0);
    let sum = 1e-12;
    CONDUCTING.forEach((id, i) => {
      const part = (LIMITING[i]! / VALENCE[id]) * Math.exp(y[place(id)]!);
      gradient[place(id)] = part;
      sum += part;
    });
    for (let i = 0; i < DIMENSIONS; i++) gradient[i]! /= sum;
    return Math.log(Math.max(conductivityOfCoordinates(y), 1e-6));
  },
});
