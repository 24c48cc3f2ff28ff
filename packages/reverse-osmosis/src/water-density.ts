/**
 * Density of air-free water at atmospheric pressure, kg/m³.
 *
 * Formula: Kell's rational polynomial in t
 * Source: Kell, J. Chem. Eng. Data 20 (1975) 97, coefficients from memory; checked against IAPWS-95 values.
 * Range: 0 to 100 °C.
 * Error: below 0.01 kg/m³ from 5 to 40 °C.
 * @example
 * ```ts
 * import { waterDensityKgPerM3 } from "@tapside/reverse-osmosis";
 * waterDensityKgPerM3(20); // => 998.2
 * ```
 */
export function waterDensityKgPerM3(t: number): number {
  const numerator =
    999.83952 +
    t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
  return numerator / (1 + 16.87985e-3 * t);
}
