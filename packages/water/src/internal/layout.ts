/** Places in the workspace's typed arrays. */

/** Totals, mol/kg. */
export const CA = 0;
export const MG = 1;
export const NA = 2;
export const K = 3;
export const CL = 4;
export const SO4 = 5;
export const NO3 = 6;
export const F = 7;
export const SI = 8;
export const TOTALS = 9;

/** Free molalities share the places of the totals; then these. */
export const CO3 = 9;
export const HCO3 = 10;
export const CO2 = 11;
export const CACO3 = 12;
export const CAHCO3 = 13;
export const MGCO3 = 14;
export const MGHCO3 = 15;
export const NACO3 = 16;
export const NAHCO3 = 17;
export const CASO4 = 18;
export const MGSO4 = 19;
export const NASO4 = 20;
export const KSO4 = 21;
export const HSO4 = 22;
export const CAOH = 23;
export const MGOH = 24;
export const HF = 25;
export const MGF = 26;
export const NAF = 27;
export const H3SIO4 = 28;
export const H2SIO4 = 29;
export const OH = 30;
export const H = 31;
export const SPECIES = 32;

/** Thermodynamic constants K (and, at the same places, conditional constants): place of the species they form. */
export const K_CALCITE = 32;
export const K_ARAGONITE = 33;
export const K_GYPSUM = 34;
export const K_ANHYDRITE = 35;
export const K_FLUORITE = 36;
export const K_SILICA = 37;
export const K_CHALCEDONY = 38;
export const K_QUARTZ = 39;
export const K_GAS = 40;
export const CONSTANTS = 41;
