/**
 * Permeate flow brought to standard conditions, in the unit of the actual flow.
 *
 * Formula: Qa · NDPs·TCFs/(NDPa·TCFa), temperature factors > 1 when warm
 * Source: ASTM D4516-19a, 6.1, as printed in a public guide to the standard.
 * Range: high rejection, no significant leak; one temperature form throughout.
 * Error: the temperature form, 13 % at 10 °C.
 * @example
 * ```ts
 * import { standardPermeateFlow } from "@tapside/reverse-osmosis";
 * standardPermeateFlow(100, { drive: 30, temperatureFactor: 0.7 }, { drive: 42, temperatureFactor: 1 }); // => 200
 * ```
 */
export const standardPermeateFlow = (
  actualFlow: number,
  actual: { readonly drive: number; readonly temperatureFactor: number },
  standard: { readonly drive: number; readonly temperatureFactor: number },
): number =>
  (actualFlow * standard.drive * standard.temperatureFactor) / (actual.drive * actual.temperatureFactor);
