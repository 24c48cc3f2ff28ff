import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import type { ConservedWater } from "./analysis.ts";
import { keeps, propertyOf, SURE } from "./internal/property-of.ts";
import { blend } from "./mix.ts";
import { speciateConserved } from "./speciate.ts";
import type { Dosed, WaterLimit } from "./suits.ts";

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

/** Chlorine of a blend: mass balance where both streams were tested, else what the tested one brings at least. */
function chlorineAt(
  feedFraction: number,
  { totalChlorineMgPerL: inFeed, permeateChlorineMgPerL: inPermeate }: BlendOptions,
): Dosed {
  if (inFeed === undefined && inPermeate === undefined) return {};
  const read = feedFraction * (inFeed ?? 0) + (1 - feedFraction) * (inPermeate ?? 0);
  return inFeed === undefined || inPermeate === undefined
    ? { leastChlorineMgPerL: read }
    : { totalChlorineMgPerL: read };
}

/** The water an appliance gets at a blend, and its chlorine. */
export function blendedStream(
  feed: ConservedWater,
  permeate: ConservedWater,
  feedFraction: number,
  options: BlendOptions = {},
): Outcome<Stream> {
  const { after, unread } = options;
  const mixed = blend(feed, permeate, feedFraction);
  return mapOutcome(after ? mapOutcome(mixed, after) : mixed, (water) =>
    known({ water, ...chlorineAt(feedFraction, options), ...(unread && { unread }) }),
  );
}

/** A feed and what the membrane makes of it: one of the waters that the readings leave possible. */
export interface BlendPair {
  readonly feed: ConservedWater;
  readonly permeate: ConservedWater;
}

/**
 * Fractions of feed blended into permeate that keep every limit of all appliances at once, in steps of one percent;
 * or the limits that make it impossible. Blends are solved, not interpolated: pH and CO2 bend. A limit that cannot be
 * told (chlorine not read) is left out of the range and has no `kept` of its own; blends at which the chlorine of one stream
 * alone breaks its limit are not kept.
 *
 * Source: mass balance. Range: as `speciate`. Error: one percent of blend; readings' error not included.
 */
export const blendRange = (
  feed: ConservedWater,
  permeate: ConservedWater,
  limits: readonly WaterLimit[],
  options: BlendOptions = {},
): Outcome<BlendAnswer> => sureBlendRange([{ feed, permeate }], limits, options, STEPS);

/**
 * The same over equally likely waters: a limit is kept at a blend when at least 95 % of them keep it, so that what the
 * readings leave open narrows the range. Every water counts the same.
 *
 * Source, Range: as `blendRange`. Error: one step of blend; the permeate's passage as it was given.
 */
export function sureBlendRange(
  pairs: readonly BlendPair[],
  limits: readonly WaterLimit[],
  options: BlendOptions = {},
  steps = 50,
): Outcome<BlendAnswer> {
  if (pairs.length === 0) return refused("no-water");
  const told = limits.map(() => true);
  const judged: boolean[][] = [];
  for (let step = 0; step <= steps; step++) {
    const keeping = limits.map(() => 0);
    const toldHere = limits.map(() => true);
    for (const { feed, permeate } of pairs) {
      const values = valuesAt(feed, permeate, step / steps, limits, options);
      if (values.kind !== "known") return values;
      values.value.forEach((value, i) => {
        if (Number.isNaN(value)) told[i] = toldHere[i] = false;
        if (keeps(value, limits[i]!)) keeping[i]! += 1;
      });
    }
    judged.push(keeping.map((count, i) => !toldHere[i] || count / pairs.length >= SURE));
  }
  const byLimit = limits.map((limit, i) => {
    const run = told[i] ? longestRun(judged.map((row) => row[i]!)) : undefined;
    return { limit, ...(run && { kept: run }) };
  });
  const whole = longestRun(judged.map((row) => row.every((ok) => ok)));
  return known(
    whole
      ? { kind: "range", lowFeedFraction: whole[0], highFeedFraction: whole[1], byLimit }
      : { ...hindrances(judged, limits), byLimit },
  );
}

const valuesAt = (
  feed: ConservedWater,
  permeate: ConservedWater,
  feedFraction: number,
  limits: readonly WaterLimit[],
  options: BlendOptions,
): Outcome<readonly number[]> =>
  mapOutcome(blendedStream(feed, permeate, feedFraction, options), (stream) =>
    mapOutcome(speciateConserved(stream.water), (water) =>
      known(limits.map((limit) => propertyOf(water, limit, stream))),
    ),
  );

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
  const steps = good.length - 1;
  return best && [best[0] / steps, best[1] / steps];
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
