import type { Rejections } from "@tapside/water";

/** Middle of what thin-film elements are said to hold back. Source: makers' estimates in a trade newsletter, common practice. */
export const usualRejections: Rejections = {
  Ca: 0.97,
  Mg: 0.97,
  K: 0.92,
  Cl: 0.945,
  SO4: 0.99,
  NO3: 0.93,
  F: 0.95,
  SiO2: 0.87,
  alkalinity: 0.955,
};
