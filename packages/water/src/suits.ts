import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import type { ConservedWater } from "./analysis.ts";
import { keeps, propertyOf, SURE } from "./internal/property-of.ts";
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

/** What is dissolved beside the water's own constituents, and what of these nobody read. */
export interface Dosed {
  /** Free and combined chlorine, mg/L as Cl2; absent = not read. */
  readonly totalChlorineMgPerL?: number;
  /** What of it is there at least where only a part was read. */
  readonly leastChlorineMgPerL?: number;
  /** Properties that stand at nothing only because nothing was read. */
  readonly unread?: ReadonlySet<PropertyId>;
}

/** One limit against one water or its samples: share of the samples that keep it. */
export interface LimitAnswer {
  readonly limit: WaterLimit;
  readonly values: readonly number[];
  readonly shareWithin: number;
  readonly answer: "within" | "outside" | "too-close-to-say" | "cannot-tell";
}

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
  return mapOutcome(solvedOnce(samples), (waters) =>
    known(limits.map((limit) => answerOf(limit, waters, dosed))),
  );
}

const solved = new WeakMap<readonly ConservedWater[], Outcome<readonly Water[]>>();

/** The same samples are asked about one limit after the other: solved the first time only. */
function solvedOnce(samples: readonly ConservedWater[]): Outcome<readonly Water[]> {
  const before = solved.get(samples);
  if (before) return before;
  const now = solveAll(samples);
  solved.set(samples, now);
  return now;
}

function solveAll(samples: readonly ConservedWater[]): Outcome<readonly Water[]> {
  const waters: Water[] = [];
  for (const sample of samples) {
    const water = speciateConserved(sample);
    if (water.kind !== "known") return water;
    waters.push(water.value);
  }
  return known(waters);
}

function answerOf(limit: WaterLimit, waters: readonly Water[], dosed: Dosed): LimitAnswer {
  const values = waters.map((water) => propertyOf(water, limit, dosed));
  if (values.some(Number.isNaN)) return { limit, values, shareWithin: 0, answer: "cannot-tell" };
  const shareWithin = values.filter((value) => keeps(value, limit)).length / values.length;
  const answer = shareWithin >= SURE ? "within" : shareWithin <= 1 - SURE ? "outside" : "too-close-to-say";
  return { limit, values, shareWithin, answer };
}
