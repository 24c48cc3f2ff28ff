import { known, type Outcome, refused } from "@tapside/quantities";

export interface CarbonUse {
  readonly ratedLitres: number;
  readonly ratedChlorineMgPerL: number;
  readonly chlorineMgPerL: number;
}

/**
 * Litres a carbon cartridge is good for at the chlorine it really meets: its rating goes as the inverse of the chlorine.
 *
 * `litres = rated litres × rated chlorine ÷ chlorine`
 *
 * Source: a printed rating (based on NSF/ANSI 42) whose product of litres and chlorine is constant; common practice, no published source.
 * Range: free chlorine 0.5 to 2 mg/L in that rating. Not for chloramine, which has a rating of its own.
 * Error: such ratings usually mean 50 % reduction, which is taste, not protection of a membrane: test after the carbon.
 *
 * @example
 * ```ts
 * import { carbonLitres } from "@tapside/procedures";
 * carbonLitres({ ratedLitres: 18900, ratedChlorineMgPerL: 2, chlorineMgPerL: 1 }); // => { kind: "known", value: 37800 }
 * ```
 */
export function carbonLitres({
  ratedLitres,
  ratedChlorineMgPerL,
  chlorineMgPerL,
}: CarbonUse): Outcome<number> {
  if (!(ratedLitres > 0 && ratedChlorineMgPerL > 0)) return refused("carbon-needs-rating");
  if (!(chlorineMgPerL > 0)) return refused("carbon-needs-chlorine");
  return known((ratedLitres * ratedChlorineMgPerL) / chlorineMgPerL);
}

/**
 * Days a carbon cartridge lasts. All of the feed passes it, not only the permeate.
 *
 * `days = litres ÷ (permeate a day ÷ recovery)`
 *
 * Source: mass balance.
 * Range: recovery above 0 up to 1.
 * Error: that of the litres a day; a drain that runs at night is not in them.
 *
 * @example
 * ```ts
 * import { carbonDays } from "@tapside/procedures";
 * carbonDays(18927, 189.27, 0.25); // => { kind: "known", value: 25.0 }
 * ```
 */
export function carbonDays(litres: number, permeateLPerDay: number, recovery: number): Outcome<number> {
  if (!(litres > 0 && permeateLPerDay > 0)) return refused("carbon-needs-litres");
  if (!(recovery > 0 && recovery <= 1))
    return refused("out-of-range", { value: recovery, unit: "", low: 0, high: 1 });
  return known((litres * recovery) / permeateLPerDay);
}
