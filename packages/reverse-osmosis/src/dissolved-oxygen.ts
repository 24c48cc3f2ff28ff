/**
 * Dissolved oxygen at saturation under 1 atm of moist air, mg/L.
 *
 * Formula: ln C = −139.34411 + 1.575701e5/T − 6.642308e7/T² + 1.243800e10/T³ − 8.621949e11/T⁴
 * Source: SWAT+ documentation, eq. 7:3.5.3 (after APHA 1985); signs and powers from memory.
 * Range: 0 to 40 °C, fresh water.
 * Error: about 0.02 mg/L.
 * @example
 * ```ts
 * import { dissolvedOxygenMgPerL } from "@tapside/reverse-osmosis";
 * dissolvedOxygenMgPerL(20); // => 9.09
 * ```
 */
export function dissolvedOxygenMgPerL(temperatureC: number): number {
  const x = 1 / (temperatureC + 273.15);
  return Math.exp(-139.34411 + x * (1.575701e5 + x * (-6.642308e7 + x * (1.2438e10 - x * 8.621949e11))));
}
