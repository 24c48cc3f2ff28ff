import { known, type Outcome, refused } from "@tapside/quantities";

export interface DoseRequest {
  /** Chlorine wanted in the filled tank and tubes. */
  readonly targetMgPerL: number;
  /** Water it is diluted in: tank and tubes. */
  readonly litres: number;
  /** Available chlorine of the product, grams per litre. "5.25 %" on a label by weight per volume is 52.5 g/L. */
  readonly strengthGPerL: number;
}

/** Above this the tank is a drum of bleach, not a tank being sanitised: a slip of the decimal sign. */
const MOST_MG_PER_L = 500;

/**
 * Millilitres of sanitiser for a volume of water: what reaches the wanted chlorine before anything has eaten of it.
 *
 * `dose mL = target mg/L × litres ÷ strength g/L`
 *
 * Source: mass balance; the form and its worked example are common practice, no published source.
 * Range: target up to 500 mg/L; the product's label and local code set target and contact time.
 * Error: that of the strength. Bleach loses strength in store, so a strip at the tap decides, not the arithmetic.
 *
 * @example
 * ```ts
 * import { sanitiserDoseMl } from "@tapside/procedures";
 * sanitiserDoseMl({ targetMgPerL: 50, litres: 11.356, strengthGPerL: 52.5 }); // => { kind: "known", value: 10.8 }
 * ```
 */
export function sanitiserDoseMl({ targetMgPerL, litres, strengthGPerL }: DoseRequest): Outcome<number> {
  const given = { targetMgPerL, litres, strengthGPerL };
  for (const [name, value] of Object.entries(given))
    if (!(Number.isFinite(value) && value > 0)) return refused("dose-needs", { name });
  if (targetMgPerL > MOST_MG_PER_L)
    return refused("dose-too-strong", { targetMgPerL, mostMgPerL: MOST_MG_PER_L });
  if (strengthGPerL * 1000 <= targetMgPerL) return refused("product-too-weak", { strengthGPerL });
  return known((targetMgPerL * litres) / strengthGPerL);
}
