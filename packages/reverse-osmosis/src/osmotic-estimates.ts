import { logMeanFactor } from "./log-mean-factor.ts";

/**
 * Osmotic pressure by the trade's rule, psi: 1 psi per 100 mg/L.
 *
 * Formula: C/100
 * Source: common practice, no source.
 * Range: tap water.
 * Error: 15 to 18 % below sodium chloride at 100 to 1000 mg/L; fair for hard natural waters.
 * @example
 * ```ts
 * import { osmoticRuleOfThumbPsi } from "@tapside/reverse-osmosis";
 * osmoticRuleOfThumbPsi(1000); // => 10
 * ```
 */
export const osmoticRuleOfThumbPsi = (mgPerL: number): number => mgPerL / 100;

/**
 * Osmotic pressure of an ideal solution, kPa; `particlesMolPerL` counts every ion.
 *
 * Formula: cRT
 * Source: van 't Hoff, textbook.
 * Range: dilute.
 * Error: 5 to 8 % high for sodium chloride from 0.03 to 0.5 mol/kg.
 * @example
 * ```ts
 * import { idealOsmoticPressureKPa } from "@tapside/reverse-osmosis";
 * idealOsmoticPressureKPa(0.2, 25); // => 495.8
 * ```
 */
export const idealOsmoticPressureKPa = (particlesMolPerL: number, temperatureC: number): number =>
  particlesMolPerL * 8.314462618 * (temperatureC + 273.15);

/**
 * Average osmotic pressure between feed and concentrate from feed conductivity, psi.
 *
 * Formula: 0.006 × average conductivity (log mean)
 * Source: UNSW Desal Wiki, "ASTM on Data Normalisation", revision 389; units psi and µS/cm inferred, not printed.
 * Range: brackish water.
 * Error: unknown.
 * @example
 * ```ts
 * import { osmoticFromConductivityPsi } from "@tapside/reverse-osmosis";
 * osmoticFromConductivityPsi(1000, 0.2); // => 6.694
 * ```
 */
export const osmoticFromConductivityPsi = (feedMicroSiemensPerCm: number, recovery: number): number =>
  0.006 * feedMicroSiemensPerCm * logMeanFactor(recovery);
