/**
 * Salt permeability at `temperatureC` over that at 25 °C, > 1 when warm. Not the water factor: setting them equal takes
 * temperature out of salt passage.
 *
 * Formula: 1.06^(T − 25)
 * Source: 6 % per °C, Water Quality Association, Education Kit Vol. X, Art. 4.
 * Range: about 5 to 35 °C.
 * Error: unknown; membranes differ.
 * @example
 * ```ts
 * import { saltTemperatureFactor } from "@tapside/reverse-osmosis";
 * saltTemperatureFactor(12); // => 0.4688
 * ```
 */
export const saltTemperatureFactor = (temperatureC: number): number => 1.06 ** (temperatureC - 25);
