import { naclMolality } from "./nacl-molality.ts";
import { naclOsmoticCoefficient } from "./nacl-osmotic-coefficient.ts";

const gasConstant = 8.314462618;
const waterKgPerM3 = 997.05;

/**
 * Osmotic pressure of a sodium chloride solution, kPa.
 *
 * Formula: π = φ·2mRTρw with Pitzer's φ at 25 °C; proportional to absolute temperature
 * Source: Pitzer & Mayorga 1973, Table I.
 * Range: 0 to 70 000 mg/L, 0 to 45 °C.
 * Error: 0.4 % against tabulated sodium chloride; natural hard waters lie 10 to 20 % below it at equal mg/L.
 * @example
 * ```ts
 * import { naclOsmoticPressureKPa } from "@tapside/reverse-osmosis";
 * naclOsmoticPressureKPa(1000, 25); // => 81.5
 * ```
 */
export function naclOsmoticPressureKPa(saltMgPerL: number, temperatureC: number): number {
  const molality = naclMolality(saltMgPerL);
  const idealKPa = (2 * molality * gasConstant * (temperatureC + 273.15) * waterKgPerM3) / 1000;
  return naclOsmoticCoefficient(molality) * idealKPa;
}
