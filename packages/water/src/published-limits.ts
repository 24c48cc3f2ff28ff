import { known, type Outcome, refused } from "@tapside/quantities";
import type { WaterLimit } from "./suits.ts";

const COFFEE = "Specialty Coffee Association of America, brewing-water standard";

/**
 * Water for brewing coffee. Dissolved solids (75–250 mg/L on a 442 scale) are left to the meter's own scale.
 *
 * Source: Specialty Coffee Association of America, water standards page. Range: brewing. Error: a matter of taste.
 */
export const COFFEE_LIMITS: readonly WaterLimit[] = [
  { property: "calciumHardness", low: 17, high: 85, unit: "mg/L CaCO3", source: COFFEE },
  { property: "pH", low: 6.5, high: 7.5, unit: "pH", source: COFFEE },
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
