import { type Outcome, refused } from "@tapside/quantities";
import type { FieldReadings } from "../complete.ts";

interface Span {
  readonly low: number;
  readonly high: number;
}

/** °C and pH of waters that readings are completed to. */
export const COMPLETED_TEMPERATURES_C: Span = { low: 0, high: 100 };
export const COMPLETED_PHS: Span = { low: 5, high: 11 };

/** The speciation holds to 5000 mg/L; half a milligram a litre per µS/cm is the least that real waters have. */
const MOST_TDS_MG_PER_L = 5000;
const MOST_EC25_US_PER_CM = 10_000;

export const within = ({ low, high }: Span, x: number) => Math.min(Math.max(x, low), high);

/** Why a reading by itself cannot be of a water that is completed, or undefined. */
export function readingRefusal({ ions, spread: _, ...rest }: FieldReadings): Outcome<never> | undefined {
  for (const [reading, value] of Object.entries({ ...rest, ...ions })) {
    if (value === undefined) continue;
    if (!Number.isFinite(value) || (value < 0 && reading !== "alkalinityMgPerLCaCO3"))
      return refused("not-a-reading", { reading });
  }
  const { temperatureC, pH, ec25UsPerCm = 0, tdsMgPerL = 0 } = rest;
  if (ec25UsPerCm > MOST_EC25_US_PER_CM || tdsMgPerL > MOST_TDS_MG_PER_L) return refused("too-concentrated");
  if (temperatureC !== undefined && temperatureC > COMPLETED_TEMPERATURES_C.high)
    return refused("temperature-out-of-range", {
      temperatureC,
      lowC: COMPLETED_TEMPERATURES_C.low,
      highC: COMPLETED_TEMPERATURES_C.high,
    });
  if (pH !== undefined && pH !== within(COMPLETED_PHS, pH))
    return refused("ph-out-of-range", { pH, low: COMPLETED_PHS.low, high: COMPLETED_PHS.high });
  return undefined;
}
