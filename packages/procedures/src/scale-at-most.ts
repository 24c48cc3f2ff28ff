import { known, missing, type Outcome, refused } from "@tapside/quantities";

export interface UntreatedWater {
  readonly hardnessMgPerLAsCaCO3?: number | undefined;
  readonly litresPerDay?: number | undefined;
  readonly days: number;
}

/**
 * Upper bound of the scale that untreated water can have left behind, grams as CaCO3: all of its hardness, dropped to the last crystal.
 * Never a forecast: drains, bleeds and wash water carry most of it away.
 *
 * `g ≤ hardness mg/L × litres a day × days ÷ 1000`
 *
 * Source: mass balance.
 * Range: any water; days counted from the day water was first known to go past the unit.
 * Error: the bound is as good as the litres a day, which nobody metered: say "if about N L/day".
 *
 * @example
 * ```ts
 * import { scaleAtMostG } from "@tapside/procedures";
 * scaleAtMostG({ hardnessMgPerLAsCaCO3: 250, litresPerDay: 40, days: 30 }); // => { kind: "known", value: 300 }
 * ```
 */
export function scaleAtMostG({ hardnessMgPerLAsCaCO3, litresPerDay, days }: UntreatedWater): Outcome<number> {
  const absent = [
    ...(hardnessMgPerLAsCaCO3 === undefined ? ["hardness"] : []),
    ...(litresPerDay === undefined ? ["bypass.litresPerDay"] : []),
  ];
  if (absent.length > 0) return missing(...absent);
  const grams = (hardnessMgPerLAsCaCO3! * litresPerDay! * days) / 1000;
  if (!Number.isFinite(grams) || grams < 0 || days < 0 || litresPerDay! < 0)
    return refused("scale-needs-amounts");
  return known(grams);
}
