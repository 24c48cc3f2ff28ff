/**
 * How the exponent on the evidence for a bell is chosen, nested: for each judged source from the other sources alone (each
 * left out in turn, the judged one unseen), and for the product from all. Mean interval score of Na, Cl, SO4 (logarithms) and
 * SI over three sets of readings, sources weighted as in the prior. Slow; prints a table.
 */

import { realWaters } from "@tapside/water";
import { leaveOut, READINGS, type ReadingName, TARGETS } from "../packages/water/src/internal/left-out.ts";

const CANDIDATES = [0.05, 0.1, 0.2];
const METERS = ["conductivity", "pH", "temperature", "hardness"] as const;
const SETS: readonly (readonly ReadingName[])[] = [METERS, [...METERS, "alkalinity"], READINGS];
/** As in the prior: a source of so many rows counts half. */
const ROWS_OF_HALF_WEIGHT = 4;
const MOST_ROWS = 60;

const counts = new Map<string, number>();
for (const { source } of realWaters()) counts.set(source, (counts.get(source) ?? 0) + 1);

function scoreOf(source: string, unseen: string | undefined, trust: number): number {
  const every = Math.ceil(counts.get(source)! / MOST_ROWS);
  const scores = SETS.flatMap((given) => {
    const judged = leaveOut(source, given, { every, samples: 120, trust, ...(unseen && { unseen }) });
    return TARGETS.filter((target) => target !== "Cl" || !given.includes("chloride")).map(
      (target) => judged[target].score,
    );
  });
  return scores.reduce((sum, score) => sum + score, 0) / scores.length;
}

for (const unseen of [undefined, "USGS-INL", "Kwale-Kenya"]) {
  const seen = [...counts].filter(([source]) => source !== unseen);
  const means = CANDIDATES.map((trust) => {
    const weighted = seen.map(([source, rows]) => {
      const weight = rows / (rows + ROWS_OF_HALF_WEIGHT);
      return { weight, score: scoreOf(source, unseen, trust) };
    });
    const total = weighted.reduce((sum, { weight }) => sum + weight, 0);
    return weighted.reduce((sum, { weight, score }) => sum + (weight * score) / total, 0);
  });
  const best = CANDIDATES[means.indexOf(Math.min(...means))];
  const told = CANDIDATES.map((trust, i) => `${trust}: ${means[i]!.toFixed(3)}`).join("  ");
  console.log(`without ${(unseen ?? "none (the product)").padEnd(20)} ${told}  chosen ${best}`);
}
