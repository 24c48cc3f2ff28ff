import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import type { ConservedWater } from "./analysis.ts";
import { MOLAR_MASS } from "./analysis.ts";
import { conductivityAt25 } from "./conductivity.ts";
import { hardnessFromIons } from "./hardness.ts";
import { blend } from "./mix.ts";
import { speciateConserved } from "./speciate.ts";
import { tdsOnScale } from "./tds-scale.ts";
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
  | "calciteIndexHot"
  | "tds442"
  | "totalChlorine";

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
  /** Whose limit it is. */
  readonly appliance?: string;
}

/** What is dissolved beside the water's own constituents. */
export interface Dosed {
  /** Free and combined chlorine, mg/L as Cl2; absent = not read. */
  readonly totalChlorineMgPerL?: number;
}

/** One limit against one water or its samples: share of the samples that keep it. */
export interface LimitAnswer {
  readonly limit: WaterLimit;
  readonly values: readonly number[];
  readonly shareWithin: number;
  readonly answer: "within" | "outside" | "too-close-to-say" | "cannot-tell";
}

const mgPerL = (water: ConservedWater, id: "Ca" | "Mg" | "Cl" | "SO4" | "Na" | "SiO2") =>
  water.totals[id] * MOLAR_MASS[id] * 1000;

const HOT_C = 100;

function hotIndex(water: Water, hotC: number): number {
  const hot = speciateConserved({ ...water, temperatureC: hotC });
  return hot.kind === "known" ? hot.value.saturation.calcite : Number.NaN;
}

function onMeter(water: Water): number {
  const shown = mapOutcome(conductivityAt25(water), (ec) => tdsOnScale(ec, "442"));
  return shown.kind === "known" ? shown.value.value : Number.NaN;
}

/** A property of a solved water in the unit of its limits; NaN where the water has no answer for it. */
function propertyOf(water: Water, limit: WaterLimit, dosed: Dosed): number {
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
    case "tds442":
      return onMeter(water);
    case "totalChlorine":
      return dosed.totalChlorineMgPerL ?? Number.NaN;
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
  dosed: Dosed = {},
): Outcome<readonly LimitAnswer[]> {
  if (samples.length === 0) return refused("no-water");
  const waters: Water[] = [];
  for (const sample of samples) {
    const solved = speciateConserved(sample);
    if (solved.kind !== "known") return solved;
    waters.push(solved.value);
  }
  return known(limits.map((limit) => answerOf(limit, waters, dosed)));
}

function answerOf(limit: WaterLimit, waters: readonly Water[], dosed: Dosed): LimitAnswer {
  const values = waters.map((water) => propertyOf(water, limit, dosed));
  if (values.some(Number.isNaN)) return { limit, values, shareWithin: 0, answer: "cannot-tell" };
  const shareWithin = values.filter((value) => keeps(value, limit)).length / values.length;
  const answer = shareWithin >= SURE ? "within" : shareWithin <= 1 - SURE ? "outside" : "too-close-to-say";
  return { limit, values, shareWithin, answer };
}

/** The fractions of feed at which one limit is kept: from low to high, or none. */
export interface LimitOnBlend {
  readonly limit: WaterLimit;
  readonly kept?: readonly [lowFeedFraction: number, highFeedFraction: number];
}

/** Blends that keep every limit, or none and what stands in the way. */
export type BlendAnswer = { readonly byLimit: readonly LimitOnBlend[] } & (
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
    }
);

/** A stream of the unit: its water and what is dosed into it. */
export interface Stream extends Dosed {
  readonly water: ConservedWater;
}

export interface BlendOptions extends Dosed {
  /** Chlorine left in the permeate; feed's is `totalChlorineMgPerL`. */
  readonly permeateChlorineMgPerL?: number;
  /** What the blend passes before the appliance, such as a calcite contactor. */
  readonly after?: (blend: ConservedWater) => Outcome<ConservedWater>;
}

const STEPS = 100;

/** The water an appliance gets at a blend, and its chlorine (mass balance where both streams were tested). */
export function blendedStream(
  feed: ConservedWater,
  permeate: ConservedWater,
  feedFraction: number,
  options: BlendOptions = {},
): Outcome<Stream> {
  const { totalChlorineMgPerL: inFeed, permeateChlorineMgPerL: inPermeate, after } = options;
  const chlorine =
    inFeed === undefined || inPermeate === undefined
      ? {}
      : { totalChlorineMgPerL: feedFraction * inFeed + (1 - feedFraction) * inPermeate };
  const mixed = blend(feed, permeate, feedFraction);
  return mapOutcome(after ? mapOutcome(mixed, after) : mixed, (water) => known({ water, ...chlorine }));
}

/**
 * Fractions of feed blended into permeate that keep every limit of all appliances at once, in steps of one percent;
 * or the limits that make it impossible. Blends are solved, not interpolated: pH and CO2 bend. A limit that cannot be
 * told (chlorine not read) is left out of the range and has no `kept` of its own.
 *
 * Source: mass balance. Range: as `speciate`. Error: one percent of blend; readings' error not included.
 */
export function blendRange(
  feed: ConservedWater,
  permeate: ConservedWater,
  limits: readonly WaterLimit[],
  options: BlendOptions = {},
): Outcome<BlendAnswer> {
  const values: number[][] = [];
  for (let step = 0; step <= STEPS; step++) {
    const solved = mapOutcome(blendedStream(feed, permeate, step / STEPS, options), (stream) =>
      mapOutcome(speciateConserved(stream.water), (water) =>
        known(limits.map((limit) => propertyOf(water, limit, stream))),
      ),
    );
    if (solved.kind !== "known") return solved;
    values.push([...solved.value]);
  }
  const told = limits.map((_, i) => values.every((row) => !Number.isNaN(row[i]!)));
  const kept = values.map((row) => row.map((value, i) => !told[i] || keeps(value, limits[i]!)));
  const byLimit = limits.map((limit, i) => {
    const run = told[i] ? longestRun(kept.map((row) => row[i]!)) : undefined;
    return { limit, ...(run && { kept: run }) };
  });
  const whole = longestRun(kept.map((row) => row.every((ok) => ok)));
  return known(
    whole
      ? { kind: "range", lowFeedFraction: whole[0], highFeedFraction: whole[1], byLimit }
      : { ...hindrances(kept, limits), byLimit },
  );
}

/** The longest run of steps that are good, as fractions of feed. */
function longestRun(good: readonly boolean[]): readonly [number, number] | undefined {
  let best: readonly [number, number] | undefined;
  let start = -1;
  for (let step = 0; step <= good.length; step++) {
    const isGood = good[step] === true;
    if (isGood && start < 0) start = step;
    if (!isGood && start >= 0) {
      if (!best || step - 1 - start > best[1] - best[0]) best = [start, step - 1];
      start = -1;
    }
  }
  return best && [best[0] / STEPS, best[1] / STEPS];
}

function hindrances(kept: readonly (readonly boolean[])[], limits: readonly WaterLimit[]) {
  const ever = (test: (row: readonly boolean[]) => boolean) => kept.some(test);
  const broken = limits.filter((_, i) => !ever((row) => row[i]!));
  const possible = limits.map((limit, i) => ({ limit, i })).filter(({ limit }) => !broken.includes(limit));
  const conflicts = possible.flatMap((a, k) =>
    possible
      .slice(k + 1)
      .filter((b) => !ever((row) => row[a.i]! && row[b.i]!))
      .map((b) => [a.limit, b.limit] as const),
  );
  return { kind: "none" as const, broken, conflicts };
}
