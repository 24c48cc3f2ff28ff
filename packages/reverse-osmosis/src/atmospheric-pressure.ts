/**
 * Mean atmospheric pressure at an altitude, kPa absolute. Tanks need it: a gauge shows pressure above this.
 *
 * Formula: 101.325 (1 − 2.25577e-5 h)^5.25588
 * Source: US Standard Atmosphere 1976, troposphere.
 * Range: −400 to 11 000 m.
 * Error: weather moves it by 3 %.
 * @example
 * ```ts
 * import { atmosphericPressureKPa } from "@tapside/reverse-osmosis";
 * atmosphericPressureKPa(0); // => 101.325
 * ```
 */
export const atmosphericPressureKPa = (altitudeM: number): number =>
  101.325 * (1 - 2.25577e-5 * altitudeM) ** 5.25588;
