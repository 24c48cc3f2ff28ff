/**
 * Dynamic viscosity of water at atmospheric pressure, mPa·s.
 *
 * Formula: Σ aᵢ (T/300 K)^bᵢ, four terms
 * Source: IAPWS SR6-08, supplementary release on liquid water at 0.1 MPa; coefficients from memory, checked against IAPWS R12-08 values.
 * Range: 0 to 110 °C.
 * Error: below 0.1 % from 5 to 40 °C.
 * @example
 * ```ts
 * import { waterViscosityMPaS } from "@tapside/reverse-osmosis";
 * waterViscosityMPaS(10); // => 1.306
 * ```
 */
export function waterViscosityMPaS(temperatureC: number): number {
  const t = (temperatureC + 273.15) / 300;
  return (280.68 * t ** -1.9 + 511.45 * t ** -7.7 + 61.131 * t ** -19.6 + 0.45903 * t ** -40) / 1000;
}
