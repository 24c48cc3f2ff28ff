import { waterDensityKgPerM3 } from "./water-density.ts";

/**
 * Flow through a sharp orifice, L/h.
 *
 * Formula: Cd A √(2Δp/ρ), Cd 0.62 for a sharp plane orifice
 * Source: Encyclopaedia Britannica, 11th ed., "Hydraulics" §17–18.
 * Range: turbulent, fully contracted.
 * Error: the coefficient is good to about 3 %; temperature hardly matters.
 * @example
 * ```ts
 * import { orificeFlowLPerH } from "@tapside/reverse-osmosis";
 * orificeFlowLPerH(0.8, 413.685, 20); // => 32.3
 * ```
 */
export function orificeFlowLPerH(
  boreMm: number,
  dropKPa: number,
  temperatureC: number,
  dischargeCoefficient = 0.62,
): number {
  if (!(dropKPa > 0)) return 0;
  const areaM2 = (Math.PI / 4) * (boreMm / 1000) ** 2;
  const speed = Math.sqrt((2 * dropKPa * 1000) / waterDensityKgPerM3(temperatureC));
  return dischargeCoefficient * areaM2 * speed * 3.6e6;
}
