import { quantile } from "@tapside/quantities";
import type { WaterAnalysis } from "../analysis.ts";
import { completeWater, type FieldReadings, LABORATORY_UNCERTAINTY } from "../complete.ts";
import { hardnessFromIons } from "../hardness.ts";
import { type PriorComponent, priorFromWaters, type RealWater, realWaters } from "../prior.ts";
import { calciteSaturationAt } from "../saturation-at.ts";
import { seededUniform } from "./seeded.ts";

/** Readings in the order technicians take them, as a real analysis would have given them. */
const READING_OF = {
  conductivity: (w: RealWater) => ({ ec25UsPerCm: w.ec25UsPerCm }),
  hardness: ({ values }: RealWater) => ({
    hardnessMgPerLCaCO3: hardnessFromIons(values.Ca ?? 0, values.Mg ?? 0),
  }),
  alkalinity: ({ values }: RealWater) => ({ alkalinityMgPerLCaCO3: values.Alk ?? 0 }),
  pH: ({ values }: RealWater) => (values.pH === undefined ? {} : { pH: values.pH }),
  temperature: ({ values }: RealWater) =>
    values.temperatureC === undefined ? {} : { temperatureC: values.temperatureC },
  chloride: ({ values }: RealWater) => (values.Cl === undefined ? {} : { ions: { Cl: values.Cl } }),
  silica: ({ values }: RealWater) => (values.SiO2 === undefined ? {} : { ions: { SiO2: values.SiO2 } }),
} as const;
export type ReadingName = keyof typeof READING_OF;
export const READINGS = Object.keys(READING_OF) as ReadingName[];

export const TARGETS = ["Na", "Cl", "SO4", "SI"] as const;
export type Target = (typeof TARGETS)[number];

/** What 90 % intervals of one quantity did over the rows of a source that the prior had not seen. */
export interface LeftOut {
  readonly rows: number;
  readonly covered: number;
  /** Median of p95 − p05, mg/L (of the index: itself). */
  readonly width: number;
  /** Mean interval score (Gneiting & Raftery 2007) of ln mg/L (of the index: itself). */
  readonly score: number;
}

function readingsOf(water: RealWater, given: readonly ReadingName[]): FieldReadings {
  const parts: FieldReadings[] = given.map((name) => READING_OF[name](water));
  return Object.assign({}, ...parts, { ions: Object.assign({}, ...parts.map(({ ions }) => ions)) });
}

/** The analysis as it was made; what it did not measure is taken as ordinary. */
export function truthOf({ values }: RealWater): WaterAnalysis {
  const { temperatureC, pH, Alk, ...ions } = values;
  return { temperatureC: temperatureC ?? 20, pH: pH ?? 7, alkalinityMgPerLCaCO3: Alk ?? 0, ions };
}

function amountOf(target: Target, water: WaterAnalysis): number {
  if (target !== "SI") return Math.max(water.ions[target] ?? 0, 0.01);
  const index = calciteSaturationAt(water, 90);
  return index.kind === "known" ? index.value : Number.NaN;
}

function intervalOf(target: Target, samples: readonly WaterAnalysis[], truth: WaterAnalysis) {
  const drawn = samples.map((sample) => amountOf(target, sample)).filter(Number.isFinite);
  const [low, high, is] = [quantile(drawn, 0.05), quantile(drawn, 0.95), amountOf(target, truth)];
  const scale = target === "SI" ? (x: number) => x : Math.log;
  const miss = Math.max(scale(low) - scale(is), 0) + Math.max(scale(is) - scale(high), 0);
  return { inside: miss === 0, width: high - low, score: scale(high) - scale(low) + 20 * miss };
}

/** Samples that `tapside water complete` draws; fewer make the ends of intervals noisy, which covers less. */
const AS_THE_PRODUCT = 400;

interface HowJudged {
  readonly samples?: number;
  /** By default the prior of all sources. */
  readonly prior?: readonly PriorComponent[];
  readonly trust?: number;
}

/** Completes analyses from some of their readings and tells what the intervals covered. */
export function judge(
  held: readonly RealWater[],
  given: readonly ReadingName[],
  { samples = AS_THE_PRODUCT, ...fitting }: HowJudged = {},
): Readonly<Record<Target, LeftOut>> {
  const intervals = held.map((water, i) => {
    const outcome = completeWater(readingsOf(water, given), {
      random: seededUniform(i + 1),
      samples,
      uncertainty: LABORATORY_UNCERTAINTY,
      ...fitting,
    });
    if (outcome.kind !== "known") throw new Error(JSON.stringify(outcome));
    return TARGETS.map((target) => intervalOf(target, outcome.value, truthOf(water)));
  });
  const summary = TARGETS.map((target, t): [Target, LeftOut] => {
    const of = intervals.map((row) => row[t]!);
    const mean = (f: (one: (typeof of)[number]) => number) => of.reduce((a, x) => a + f(x), 0) / of.length;
    const widths = of.map((one) => one.width);
    return [
      target,
      {
        rows: of.length,
        covered: mean((one) => (one.inside ? 1 : 0)),
        width: quantile(widths, 0.5),
        score: mean((one) => one.score),
      },
    ];
  });
  return Object.fromEntries(summary) as Record<Target, LeftOut>;
}

interface HowLeftOut {
  readonly every?: number;
  readonly samples?: number;
  /** A source that the prior does not see either: what is chosen by this must not know it. */
  readonly unseen?: string;
  readonly trust?: number;
}

/** Judges the completion on every n-th row of one source by a prior made of the other sources. */
export function leaveOut(
  source: string,
  given: readonly ReadingName[],
  { every = 1, unseen, ...how }: HowLeftOut = {},
): Readonly<Record<Target, LeftOut>> {
  const waters = realWaters();
  const prior = priorFromWaters(waters.filter((water) => water.source !== source && water.source !== unseen));
  const held = waters.filter((water) => water.source === source).filter((_, i) => i % every === 0);
  return judge(held, given, { ...how, prior });
}
