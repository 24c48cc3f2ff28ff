import { known, type Outcome, refused } from "@tapside/quantities";
import type { ConservedWater } from "./analysis.ts";
import { MOLAR_MASS } from "./analysis.ts";
import { conductivityAt25 } from "./conductivity.ts";
import { hardnessFromIons } from "./hardness.ts";
import { blend } from "./mix.ts";
import { speciateConserved } from "./speciate.ts";
import type { Water } from "./water.ts";

/** What a limit can be set on. */
export type PropertyId =
  | "calcium"
  | "hardness"
  | "calciumHardness"
  | "alkalinity"
  | "chloride"
  | "sulfate"
  | "sodium"
  | "silica"
  | "freeCo2"
  | "pH"
  | "conductivity25"
  | "calciteIndexHot";

/** One limit of an appliance: from its label, or from a published need named in `source`. */
export interface WaterLimit {
  readonly property: PropertyId;
  readonly low?: number;
  readonly high?: number;
  /** mg/L; hardness and alkalinity as CaCO3; µS/cm; pH units. */
  readonly unit: string;
  readonly source: string;
  /** Temperature of the appliance, for `calciteIndexHot`. */
  readonly hotC?: number;
}

/** One limit against one water or its samples: share of the samples that keep it. */
export interface LimitAnswer {
  readonly limit: WaterLimit;
  readonly values: readonly number[];
  readonly shareWithin: number;
  readonly answer: "within" | "outside" | "too-close-to-say";
}

const mgPerL = (water: ConservedWater, id: "Ca" | "Mg" | "Cl" | "SO4" | "Na" | "SiO2") =>
  water.totals[id] * MOLAR_MASS[id] * 1000;

const HOT_C = 100;

function hotIndex(water: Water, hotC: number): number {
  const hot = speciateConserved({ ...water, temperatureC: hotC });
  return hot.kind === "known" ? hot.value.saturation.calcite : Number.NaN;
}

/** A property of a solved water in the unit of its limits; NaN where the water has no answer for it. */
function propertyOf(water: Water, limit: WaterLimit): number {
  switch (limit.property) {
    case "calcium":
      return mgPerL(water, "Ca");
    case "hardness":
      return hardnessFromIons(mgPerL(water, "Ca"), mgPerL(water, "Mg"));
    case "calciumHardness":
      return hardnessFromIons(mgPerL(water, "Ca"), 0);
    case "alkalinity":
      return water.alkalinityEqPerKg * 50050;
    case "chloride":
      return mgPerL(water, "Cl");
    case "sulfate":
      return mgPerL(water, "SO4");
    case "sodium":
      return mgPerL(water, "Na");
    case "silica":
      return mgPerL(water, "SiO2");
    case "freeCo2":
      return water.molality.CO2 * 44009.5;
    case "pH":
      return water.pH;
    case "conductivity25": {
      const ec = conductivityAt25(water);
      return ec.kind === "known" ? ec.value : Number.NaN;
    }
    case "calciteIndexHot":
      return hotIndex(water, limit.hotC ?? HOT_C);
  }
}

const keeps = (value: number, { low, high }: WaterLimit) =>
  value >= (low ?? Number.NEGATIVE_INFINITY) && value <= (high ?? Number.POSITIVE_INFINITY);

/** Share of samples above which a limit counts as kept, and below whose complement as broken. */
const SURE = 0.95;

/**
 * A water, or equally likely samples of it, against limits one by one. "Too close to say" when fewer than 95 % of the
 * samples agree. Guidance, no guarantee: the appliance's manual rules.
 *
 * Source: the limits carry theirs. Range: as `speciate`. Error: carried by the samples.
 */
export function suits(
  samples: readonly ConservedWater[],
  limits: readonly WaterLimit[],
): Outcome<readonly LimitAnswer[]> {
  if (samples.length === 0) return refused("no-water");
  const waters: Water[] = [];
  for (const sample of samples) {
    const solved = speciateConserved(sample);
    if (solved.kind !== "known") return solved;
    waters.push(solved.value);
  }
  return known(limits.map((limit) => answerOf(limit, waters)));
}

function answerOf(limit: WaterLimit, waters: readonly Water[]): LimitAnswer {
  const values = waters.map((water) => propertyOf(water, limit));
  const shareWithin = values.filter((value) => keeps(value, limit)).length / values.length;
  const answer = shareWithin >= SURE ? "within" : shareWithin <= 1 - SURE ? "outside" : "too-close-to-say";
  return { limit, values, shareWithin, answer };
}

/** Blends that keep every limit, or none and what stands in the way. */
export type BlendAnswer =
  | {
      readonly kind: "range";
      readonly lowFeedFraction: number;
      readonly highFeedFraction: number;
    }
  | {
      readonly kind: "none";
      /** Limits no blend keeps, and pairs that no blend keeps together. */
      readonly broken: readonly WaterLimit[];
      readonly conflicts: readonly (readonly [WaterLimit, WaterLimit])[];
    };

const STEPS = 100;

/**
 * Fractions of feed blended into permeate that keep every limit of all appliances at once, in steps of one percent;
 * or the limits that make it impossible. Blends are solved, not interpolated: pH and CO2 bend.
 *
 * Source: mass balance. Range: as `speciate`. Error: one percent of blend; readings' error not included.
 */
export function blendRange(
  feed: ConservedWater,
  permeate: ConservedWater,
  limits: readonly WaterLimit[],
): Outcome<BlendAnswer> {
  const kept: boolean[][] = [];
  for (let step = 0; step <= STEPS; step++) {
    const mixed = blend(feed, permeate, step / STEPS);
    if (mixed.kind !== "known") return mixed;
    const solved = speciateConserved(mixed.value);
    if (solved.kind !== "known") return solved;
    kept.push(limits.map((limit) => keeps(propertyOf(solved.value, limit), limit)));
  }
  return known(longestRun(kept) ?? hindrances(kept, limits));
}

function longestRun(kept: readonly (readonly boolean[])[]): BlendAnswer | undefined {
  let best: readonly [number, number] | undefined;
  let start = -1;
  for (let step = 0; step <= kept.length; step++) {
    const good = step < kept.length && kept[step]!.every((ok) => ok);
    if (good && start < 0) start = step;
    if (!good && start >= 0) {
      if (!best || step - 1 - start > best[1] - best[0]) best = [start, step - 1];
      start = -1;
    }
  }
  return best && { kind: "range", lowFeedFraction: best[0] / STEPS, highFeedFraction: best[1] / STEPS };
}

function hindrances(kept: readonly (readonly boolean[])[], limits: readonly WaterLimit[]): BlendAnswer {
  const ever = (test: (row: readonly boolean[]) => boolean) => kept.some(test);
  const broken = limits.filter((_, i) => !ever((row) => row[i]!));
  const possible = limits.map((limit, i) => ({ limit, i })).filter(({ limit }) => !broken.includes(limit));
  const conflicts = possible.flatMap((a, k) =>
    possible
      .slice(k + 1)
      .filter((b) => !ever((row) => row[a.i]! && row[b.i]!))
      .map((b) => [a.limit, b.limit] as const),
  );
  return { kind: "none", broken, conflicts };
}
