import { known, mapOutcome, type Outcome, quantile } from "@tapside/quantities";
import type { WaterAnalysis } from "./analysis.ts";
import { heatClosed } from "./heat.ts";
import { precipitationPotential } from "./precipitation.ts";
import { speciate } from "./speciate.ts";

/** Saturation and scale of one water at one temperature, heated closed. */
export interface ScalePoint {
  readonly temperatureC: number;
  readonly calciteIndex: number;
  /** CaCO3 laid down on the way to saturation, mg per litre heated; 0 where the water dissolves. */
  readonly scaleMgPerL: number;
}

/**
 * Saturation of calcite and the scale laid down at each temperature after closed heating.
 *
 * Source: `heatClosed` and `precipitationPotential`. Range: 0–100 °C (160 °C extrapolated).
 * Error: ±0.1 in the index between databases; an open kettle that loses CO2 lays down 1.3 to 1.7 times as much.
 */
export function scaleCurve(
  water: WaterAnalysis,
  temperaturesC: readonly number[],
): Outcome<readonly ScalePoint[]> {
  return mapOutcome(speciate(water), (cold) => {
    const points: ScalePoint[] = [];
    for (const temperatureC of temperaturesC) {
      const point = mapOutcome(heatClosed(cold, temperatureC), (hot) =>
        mapOutcome(precipitationPotential(hot), ({ mgPerLCaCO3 }) =>
          known({
            temperatureC,
            calciteIndex: hot.saturation.calcite,
            scaleMgPerL: Math.max(0, mgPerLCaCO3),
          }),
        ),
      );
      if (point.kind !== "known") return point;
      points.push(point.value);
    }
    return known(points);
  });
}

/** 5, 50 and 95 % of the samples at one temperature. */
export interface ScaleBandPoint {
  readonly temperatureC: number;
  readonly calciteIndex: readonly [low: number, middle: number, high: number];
  readonly scaleMgPerL: readonly [low: number, middle: number, high: number];
}

/** What the index of the databases leaves open beside the readings: ±0.1. Source: spread of three databases, `reference/water-cases`. */
export const INDEX_MODEL_SPREAD = 0.1;

/**
 * The curve over the samples of a completion: 5, 50 and 95 % at each temperature. Samples without an answer are left out;
 * a temperature at which no sample answers is left out.
 *
 * Source, Range, Error: as `scaleCurve`; the band holds readings and prior, not the spread of databases.
 */
export function scaleBand(
  samples: readonly WaterAnalysis[],
  temperaturesC: readonly number[],
): readonly ScaleBandPoint[] {
  const curves = samples.flatMap((sample) => {
    const curve = scaleCurve(sample, temperaturesC);
    return curve.kind === "known" ? [curve.value] : [];
  });
  return temperaturesC.flatMap((temperatureC, i) => {
    const at = (of: (point: ScalePoint) => number) =>
      curves.map((curve) => of(curve[i]!)).filter((value) => Number.isFinite(value));
    const [index, scale] = [at((p) => p.calciteIndex), at((p) => p.scaleMgPerL)];
    if (index.length === 0) return [];
    const three = (values: readonly number[]) =>
      [0.05, 0.5, 0.95].map((p) => quantile(values, p)) as unknown as readonly [number, number, number];
    return [{ temperatureC, calciteIndex: three(index), scaleMgPerL: three(scale) }];
  });
}
