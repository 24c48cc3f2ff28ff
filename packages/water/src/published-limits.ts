import { known, type Outcome, refused } from "@tapside/quantities";
import type { WaterLimit } from "./suits.ts";

const COFFEE = "Specialty Coffee Association of America, brewing-water standard";

/**
 * Water for brewing coffee: dissolved solids on the 442 scale, calcium hardness, pH, no chlorine (nothing found by a
 * test of 0.02 mg/L steps). Its targets of 40 mg/L alkalinity and 10 mg/L sodium are wishes without limits and left out.
 *
 * Source: Specialty Coffee Association of America, water standards page. Range: brewing. Error: a matter of taste.
 */
export const COFFEE_LIMITS: readonly WaterLimit[] = [
  { property: "tds442", low: 75, high: 250, unit: "ppm 442", source: COFFEE },
  { property: "calciumHardness", low: 17, high: 85, unit: "mg/L CaCO3", source: COFFEE },
  { property: "pH", low: 6.5, high: 7.5, unit: "pH", source: COFFEE },
  { property: "totalChlorine", high: 0.02, unit: "mg/L", source: COFFEE },
];

/**
 * Low-mineral water on copper and brass: hardly any minerals and free CO2 together. The advice is to keep copper away
 * from permeate and to avoid brass; the figure that says "permeate-like" is ours.
 *
 * Source: American Society of Plumbing Engineers, Pipeline, expert answer on materials for RO water; 100 µS/cm and
 * pH 6.5 common practice, no source (pH 6.5 is also the lower secondary level of 40 CFR 143.3).
 * Range: guidance. Error: copper release also rises with bicarbonate (Edwards, Schock, Meyer 1996); no index tells it.
 */
export const COPPER_LIMITS: readonly WaterLimit[] = [
  {
    property: "conductivity25",
    low: 100,
    unit: "µS/cm",
    source: "ASPE Pipeline, materials for RO water (100 µS/cm: common practice)",
  },
  { property: "pH", low: 6.5, unit: "pH", source: "40 CFR 143.3 secondary level" },
];

/** Silica above which scaling on heated plates rises. Common practice: a plate heat-exchanger maker's table. */
export const SILICA_LIMITS: readonly WaterLimit[] = [
  { property: "silica", high: 150, unit: "mg/L", source: "plate heat-exchanger table (common practice)" },
];

/** Free CO2 above which copper brazing suffers. Common practice: a plate heat-exchanger maker's table. */
export const COPPER_BRAZING_LIMITS: readonly WaterLimit[] = [
  {
    property: "freeCo2",
    high: 20,
    unit: "mg/L",
    source: "plate heat-exchanger table (common practice)",
  },
];

/** Hardness above which scale shows in steamers, proofers and combination ovens: about 4 gpg. Source: WC&P, 15 July 2000. */
export const STEAM_LIMITS: readonly WaterLimit[] = [
  {
    property: "hardness",
    high: 68,
    unit: "mg/L CaCO3",
    source: "Food service water treatment, WC&P, 15 July 2000",
  },
];

export type SteelGrade = "304" | "316";

/** Chloride in mg/L up to which a grade is accepted at each temperature. */
const CHLORIDE_STEPS: Readonly<Record<SteelGrade, readonly (readonly [upToC: number, mgPerL: number])[]>> = {
  "304": [
    [60, 50],
    [80, 25],
    [120, 10],
  ],
  "316": [
    [60, 300],
    [80, 150],
    [120, 80],
    [130, 25],
  ],
};

/**
 * Chloride limit for a grade of stainless steel in contact with hot water. Where a boilerless cavity dries water on hot
 * steel, chloride concentrates and no such limit protects it.
 *
 * Source: plate heat-exchanger maker's table (common practice). Range: to 120 °C (304) or 130 °C (316).
 * Error: guidance; pH below 6 raises the risk and above 7.5 lowers it.
 *
 * @example
 * ```ts
 * import { steelChlorideLimit } from "@tapside/water";
 * steelChlorideLimit("304", 80).value.high; // => 25
 * ```
 */
export function steelChlorideLimit(grade: SteelGrade, temperatureC: number): Outcome<WaterLimit> {
  const step = CHLORIDE_STEPS[grade].find(([upToC]) => temperatureC <= upToC);
  if (!step) return refused("beyond-steel-grade", { grade, temperatureC });
  return known({
    property: "chloride",
    high: step[1],
    unit: "mg/L",
    source: "plate heat-exchanger table (common practice)",
    hotC: temperatureC,
  });
}
