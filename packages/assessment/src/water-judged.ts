import { known, mapOutcome, missing, type Outcome, quantile } from "@tapside/quantities";
import {
  CONSTITUENTS,
  centralWater,
  completeWater,
  type FieldReadings,
  mostTellingReadings,
  type ScaleBandPoint,
  scaleBand,
  seededUniform,
  type WaterAnalysis,
} from "@tapside/water";
import { givenNames } from "./feed-water.ts";
import { remember } from "./internal/remember.ts";

/** One constituent of a completed water, 5, 50 and 95 %; `measured` when it was read or reported. */
export interface JudgedConstituent {
  readonly id: string;
  readonly measured: boolean;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** A feed water completed from what was given, and what it does when heated. */
export interface WaterJudged {
  /** Names of the readings it was completed from. */
  readonly given: readonly string[];
  readonly constituents: readonly JudgedConstituent[];
  /** Saturation of calcite and scale by temperature, closed heating. */
  readonly band: readonly ScaleBandPoint[];
  /** The reading that would narrow the calcite index at 90 °C most. */
  readonly mostTelling?: string;
}

const SEED = 90;
const READING_OF = { pH: "pH", Alk: "alkalinityMgPerLCaCO3" } as const;

/** Temperatures of the curve, °C. */
export const CURVE_C = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100] as const;

/** Without conductivity, solids or any ion there is nothing to go by. */
const tellsOfWater = (readings: FieldReadings) =>
  givenNames(readings).some((name) => name !== "temperatureC" && name !== "pH");

/** The samples of a water from what was given. */
export const waterSamples = (readings: FieldReadings, samples: number): Outcome<readonly WaterAnalysis[]> =>
  tellsOfWater(readings)
    ? completeWater(readings, { random: seededUniform(SEED), samples })
    : missing("feedTds");

/** One water in the middle of what was given, at once and without an interval. */
export const waterAtOnce = (readings: FieldReadings): Outcome<WaterAnalysis> =>
  tellsOfWater(readings) ? centralWater(readings) : missing("feedTds");

function constituent(id: string, measured: boolean, values: readonly number[]): JudgedConstituent {
  return {
    id,
    measured,
    low: quantile(values, 0.05),
    middle: quantile(values, 0.5),
    high: quantile(values, 0.95),
  };
}

/** A completed water told: constituents with their intervals, the curve over temperature, the next test worth making. */
export function judgeWater(
  readings: FieldReadings,
  samples: readonly WaterAnalysis[],
  temperaturesC: readonly number[],
): WaterJudged {
  const given = givenNames(readings);
  const telling = mostTellingReadings(samples, readings);
  const first = telling.kind === "known" ? telling.value[0]?.reading : undefined;
  return {
    given,
    constituents: [
      ...CONSTITUENTS.map((id) =>
        constituent(
          id,
          given.includes(id),
          samples.map((water) => water.ions[id] ?? 0),
        ),
      ),
      constituent(
        "Alk",
        given.includes(READING_OF.Alk),
        samples.map((water) => water.alkalinityMgPerLCaCO3),
      ),
      constituent(
        "pH",
        given.includes(READING_OF.pH),
        samples.map((water) => water.pH),
      ),
    ],
    band: scaleBand(samples, temperaturesC),
    ...(first !== undefined && { mostTelling: first }),
  };
}

/** Fewer samples and temperatures than the water page: a judgement is made again with every reading. */
const QUICK = { samples: 40, temperaturesC: [20, 60, 80, 100] } as const;

/** The feed water of a visit as its judgement holds it. */
export const quickWater = remember(
  (readings: FieldReadings): Outcome<WaterJudged> =>
    mapOutcome(waterSamples(readings, QUICK.samples), (samples) =>
      known(judgeWater(readings, samples, QUICK.temperaturesC)),
    ),
  50,
);
