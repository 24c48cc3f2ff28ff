/** Ids of the constituents of a water, as used in records, tables and limits. */
export const CONSTITUENTS = ["Ca", "Mg", "Na", "K", "Cl", "SO4", "NO3", "F", "SiO2"] as const;
export type ConstituentId = (typeof CONSTITUENTS)[number];

/** Molar masses of the reference tables, g/mol. */
export const MOLAR_MASS: Readonly<Record<ConstituentId, number>> = {
  Ca: 40.08,
  Mg: 24.312,
  Na: 22.9898,
  K: 39.102,
  Cl: 35.453,
  SO4: 96.064,
  NO3: 62.0049,
  F: 18.9984,
  SiO2: 60.0843,
};
export const CO2_G_PER_MOL = 44.0095;
export const CACO3_G_PER_MOL = 100.0911;
export const CASO4_G_PER_MOL = 136.144;
/** mg of CaCO3 that stand for one milliequivalent of alkalinity. */
export const CACO3_MG_PER_MEQ = 50.05;

/** Charge of the dissolved ion; silica carries none. */
export const CHARGE: Readonly<Record<ConstituentId, number>> = {
  Ca: 2,
  Mg: 2,
  Na: 1,
  K: 1,
  Cl: -1,
  SO4: -2,
  NO3: -1,
  F: -1,
  SiO2: 0,
};

/** mg per litre of each constituent, as the ion (silica as SiO2). 1 L is taken as 1 kg of water. Absent means none. */
export type IonsMgPerL = Readonly<Partial<Record<ConstituentId, number>>>;

/** A water as a laboratory reports it. */
export interface WaterAnalysis {
  readonly temperatureC: number;
  /** Activity scale, −log a(H+). */
  readonly pH: number;
  /** Total alkalinity, mg/L as CaCO3: hydroxide, silicate and pairs included. */
  readonly alkalinityMgPerLCaCO3: number;
  readonly ions: IonsMgPerL;
}

/** What survives heating, mixing and splitting: the totals a water keeps whatever its pH. mol (eq) per kg of water. */
export interface ConservedWater {
  readonly temperatureC: number;
  readonly totals: Readonly<Record<ConstituentId, number>>;
  readonly alkalinityEqPerKg: number;
  readonly carbonMolPerKg: number;
}
