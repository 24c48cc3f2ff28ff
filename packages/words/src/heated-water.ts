import type { DecimalSign } from "./messages.ts";
import { amountRange } from "./water-amounts.ts";
import type { WaterBandPoint } from "./water-words.ts";

/** What one language says of a water heated; which of it is said is decided once, for all languages. */
export interface HeatedPhrases {
  readonly decimalSign: DecimalSign;
  dissolves(temperatureC: number): string;
  doesNotScale(temperatureC: number): string;
  mayScale(temperatureC: number, range: string): string;
  /** From "hardly scales" to "scales heavily", one more than `HEAVIER_ABOVE` has steps. */
  readonly grades: readonly [string, string, string, string, string];
  scales(grade: string, temperatureC: number, range: string): string;
}

/** mg/L laid down at the middle above which the next grade is said. Common practice, no source. */
const HEAVIER_ABOVE = [5, 40, 100, 200];

/** How a water scales when heated, with the range of mg laid down per litre. */
export function heatedWater(say: HeatedPhrases, point: WaterBandPoint): string {
  const { temperatureC, calciteIndex, scaleMgPerL } = point;
  const [low, middle, high] = scaleMgPerL;
  if (high < 1) return calciteIndex[1] < -0.1 ? say.dissolves(temperatureC) : say.doesNotScale(temperatureC);
  const range = amountRange(say.decimalSign, low, high);
  if (low < 1 && high > 40) return say.mayScale(temperatureC, range);
  const grade = HEAVIER_ABOVE.filter((step) => middle > step).length;
  return say.scales(say.grades[grade]!, temperatureC, range);
}
