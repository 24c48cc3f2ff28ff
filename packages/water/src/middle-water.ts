import { CONSTITUENTS, type WaterAnalysis } from "./analysis.ts";

/**
 * The sample nearest the middle of a completion: one whole water that balances, for what wants a single water. Nearest
 * = least sum of squared distances from the medians, in logarithms and in units of each quantity's own spread.
 *
 * Source: medoid (textbook). Range: one sample or more. Error: it is one of many equally likely waters, never a fact.
 */
export function middleWater(samples: readonly WaterAnalysis[]): WaterAnalysis | undefined {
  const columns = [
    (w: WaterAnalysis) => w.pH,
    (w: WaterAnalysis) => Math.log(Math.max(w.alkalinityMgPerLCaCO3, 0) + 0.1),
    ...CONSTITUENTS.map((id) => (w: WaterAnalysis) => Math.log((w.ions[id] ?? 0) + 0.1)),
  ].map((of) => {
    const values = samples.map(of);
    const sorted = [...values].sort((a, b) => a - b);
    const middle = sorted[sorted.length >> 1] ?? 0;
    const spread = sorted[Math.floor(0.84 * sorted.length)] ?? middle;
    return values.map((value) => ((value - middle) / (spread - middle + 0.01)) ** 2);
  });
  const distance = samples.map((_, i) => columns.reduce((sum, column) => sum + column[i]!, 0));
  return samples[distance.indexOf(Math.min(...distance))];
}
