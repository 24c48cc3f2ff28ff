/**
 * First dissociation exponent of carbonic acid.
 *
 * Formula: log K(CO₃²⁻ + 2H⁺ = CO₂ + H₂O) − log K(CO₃²⁻ + H⁺ = HCO₃⁻), each a polynomial in T
 * Source: USGS file phreeqc.dat, 22 May 2024.
 * Range: 0 to 90 °C.
 * Error: 0.002.
 * @example
 * ```ts
 * import { carbonicPk1 } from "@tapside/reverse-osmosis";
 * carbonicPk1(25); // => 6.352
 * ```
 */
export function carbonicPk1(temperatureC: number): number {
  const t = temperatureC + 273.15;
  const log = Math.log10(t);
  const one = 107.8871 + 0.03252849 * t - 5151.79 / t - 38.92561 * log + 563713.9 / t ** 2;
  const two = 464.1965 + 0.09344813 * t - 26986.16 / t - 165.75951 * log + 2248628.9 / t ** 2;
  return two - one;
}

/**
 * Free carbon dioxide beside bicarbonate, ideal solution, mg/L.
 *
 * Formula: [HCO₃⁻]·10^(pK1 − pH)
 * Source: mass action with `carbonicPk1`.
 * Range: pH 5 to 8.5.
 * Error: 5 to 10 % at tap-water ionic strength, which is not in it.
 * @example
 * ```ts
 * import { freeCarbonDioxideMgPerL } from "@tapside/reverse-osmosis";
 * freeCarbonDioxideMgPerL({ ph: 7.6, bicarbonateMgPerL: 150 }, 25); // => 6.11
 * ```
 */
export function freeCarbonDioxideMgPerL(
  water: { readonly ph: number; readonly bicarbonateMgPerL: number },
  temperatureC: number,
): number {
  const bicarbonateMmolPerL = water.bicarbonateMgPerL / 61.017;
  return bicarbonateMmolPerL * 10 ** (carbonicPk1(temperatureC) - water.ph) * 44.0095;
}
