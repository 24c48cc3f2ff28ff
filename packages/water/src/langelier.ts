import { known, type Outcome, refused } from "@tapside/quantities";

/** Readings the simplified index needs. Hardness and alkalinity in mg/L as CaCO3. */
export interface LangelierInput {
  readonly temperatureC: number;
  readonly tdsMgPerL: number;
  readonly calciumHardnessMgPerLCaCO3: number;
  readonly alkalinityMgPerLCaCO3: number;
}

/** Two ways to the temperature term that differ by up to 0.11; always name the one used. */
export type LangelierVariant = "handbook-table" | "formula";

/** Temperature term B of the handbook: °C, B. */
const TABLE_B = [
  [20, 2.09],
  [30, 1.88],
  [48.89, 1.57],
] as const;

/** Temperature term B. The table's three points in hand are joined by straight lines and refuse outside them. */
function temperatureTerm(temperatureC: number, variant: LangelierVariant): Outcome<number> {
  if (variant === "formula") return known(-13.12 * Math.log10(temperatureC + 273) + 34.55);
  if (temperatureC < 20 || temperatureC > 48.9)
    return refused("temperature-out-of-range", { temperatureC, lowC: 20, highC: 48.9 });
  const i = temperatureC <= 30 ? 0 : 1;
  const [lowC, low] = TABLE_B[i]!;
  const [highC, high] = TABLE_B[i + 1]!;
  return known(low + ((temperatureC - lowC) / (highC - lowC)) * (high - low));
}

/**
 * Saturation pH of the simplified Langelier index: pHs = (9.3 + A + B) − (C + D), A = (log TDS − 1)/10,
 * C = log(calcium hardness) − 0.4, D = log(alkalinity).
 *
 * Source: UFC 3-240-13FN (2005), App. B (table); formula for B as at draftlessig.org/how-is-langelier-calculated.
 * Range: formula 0–90 °C; table 20–48.9 °C. Error: about 0.1 between variants; prefer `speciate(…).saturation.calcite`.
 *
 * @example
 * ```ts
 * import { simplifiedSaturationPh } from "@tapside/water";
 * const readings = {
 *   temperatureC: 48.89, tdsMgPerL: 1000, calciumHardnessMgPerLCaCO3: 500, alkalinityMgPerLCaCO3: 100 };
 * simplifiedSaturationPh(readings, "handbook-table"); // => { kind: "known", value: 6.77 }
 * simplifiedSaturationPh(readings, "formula"); // => { kind: "known", value: 6.850 }
 * ```
 */
export function simplifiedSaturationPh(input: LangelierInput, variant: LangelierVariant): Outcome<number> {
  const { tdsMgPerL, calciumHardnessMgPerLCaCO3, alkalinityMgPerLCaCO3, temperatureC } = input;
  if (!(tdsMgPerL > 0 && calciumHardnessMgPerLCaCO3 > 0 && alkalinityMgPerLCaCO3 > 0))
    return refused("not-positive", { tdsMgPerL, calciumHardnessMgPerLCaCO3, alkalinityMgPerLCaCO3 });
  const term = temperatureTerm(temperatureC, variant);
  if (term.kind !== "known") return term;
  const a = (Math.log10(tdsMgPerL) - 1) / 10;
  const c = Math.log10(calciumHardnessMgPerLCaCO3) - 0.4;
  return known(9.3 + a + term.value - c - Math.log10(alkalinityMgPerLCaCO3));
}

/** C of Larson & Buswell at TDS 400 mg/L, every 10 °C from 0. */
const LARSON_BUSWELL_400 = [2.81, 2.59, 2.38, 2.22, 2.04, 1.88, 1.72, 1.59, 1.44, 1.31] as const;

/**
 * Larson–Buswell C for pHs = pCa + pAlk + C at TDS 400 mg/L, interpolated.
 *
 * Source: Davis, Water and Wastewater Engineering, Table 7-5. Range: 0–90 °C, TDS near 400 mg/L only.
 * Error: the old constants give an LSI about 0.15 below the thermodynamic one.
 */
export function larsonBuswellC400(temperatureC: number): Outcome<number> {
  if (!(temperatureC >= 0 && temperatureC <= 90))
    return refused("temperature-out-of-range", { temperatureC, lowC: 0, highC: 90 });
  const i = Math.min(Math.floor(temperatureC / 10), LARSON_BUSWELL_400.length - 2);
  const f = temperatureC / 10 - i;
  return known(LARSON_BUSWELL_400[i]! + f * (LARSON_BUSWELL_400[i + 1]! - LARSON_BUSWELL_400[i]!));
}
