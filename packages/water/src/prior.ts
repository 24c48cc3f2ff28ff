import { CACO3_MG_PER_MEQ, CHARGE, MOLAR_MASS } from "./analysis.ts";
import { REAL_WATERS_TEXT } from "./internal/real-waters-table.ts";

/** Coordinates of a water in the prior: ln meq/L of each ion and of alkalinity, ln mg/L of silica, pH, °C. */
export const COORDINATES = [
  "Ca",
  "Mg",
  "Na",
  "K",
  "Alk",
  "Cl",
  "SO4",
  "NO3",
  "F",
  "SiO2",
  "pH",
  "temperatureC",
] as const;
export type CoordinateId = (typeof COORDINATES)[number];
export const DIMENSIONS = COORDINATES.length;

/** mg/L in one unit of the coordinate: equivalents for ions, mg for silica. */
export const MG_PER_UNIT: readonly number[] = COORDINATES.map((id) => {
  if (id === "Alk") return CACO3_MG_PER_MEQ;
  if (id === "SiO2" || id === "pH" || id === "temperatureC") return 1;
  return MOLAR_MASS[id] / Math.abs(CHARGE[id]);
});

/** A real analysis with what it measured (mg/L, alkalinity as CaCO3); undefined where it did not. */
export interface RealWater {
  readonly source: string;
  readonly ec25UsPerCm: number;
  readonly values: Readonly<Partial<Record<CoordinateId, number>>>;
}

/** One bell of the prior. */
export interface PriorComponent {
  readonly name: string;
  readonly weight: number;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

const FILE_ORDER = ["Ca", "Mg", "Na", "K", "Alk", "Cl", "SO4", "NO3", "F", "SiO2"] as const;

/** The analyses the default prior is made of. Source: `reference/real-waters`. */
export function realWaters(): readonly RealWater[] {
  return REAL_WATERS_TEXT.trim()
    .split("\n")
    .map((line) => {
      const [source, temperature, pH, ec, ...ions] = line.split(",");
      const values: Partial<Record<CoordinateId, number>> = {};
      const put = (id: CoordinateId, text: string | undefined) => {
        if (text) values[id] = Number(text);
      };
      put("temperatureC", temperature);
      put("pH", pH);
      FILE_ORDER.forEach((id, i) => {
        put(id, ions[i]);
      });
      return { source: source!, ec25UsPerCm: Number(ec), values };
    });
}

/** Below this a reported concentration says only "little", in units of the coordinate. */
const FLOOR = 0.0005;

/** One coordinate of an analysis, or undefined. */
export function coordinate(id: CoordinateId, value: number | undefined): number | undefined {
  if (value === undefined) return undefined;
  if (id === "pH" || id === "temperatureC") return value;
  return Math.log(Math.max(value / MG_PER_UNIT[COORDINATES.indexOf(id)]!, FLOOR));
}

/** Fills what an analysis lacks from the most similar one that has it. */
function completed(waters: readonly RealWater[]): Float64Array[] {
  const known = waters.map((water) => COORDINATES.map((id) => coordinate(id, water.values[id])));
  const distance = (a: (number | undefined)[], b: (number | undefined)[]) => {
    let sum = 0;
    for (let i = 0; i < DIMENSIONS - 1; i++)
      if (a[i] !== undefined && b[i] !== undefined) sum += (a[i]! - b[i]!) ** 2;
    return sum;
  };
  return known.map((row) => {
    const filled = Float64Array.from(row, (x) => x ?? 0);
    row.forEach((x, i) => {
      if (x !== undefined) return;
      const donors = known.filter((other) => other[i] !== undefined);
      const nearest = donors.reduce((a, b) => (distance(row, b) < distance(row, a) ? b : a), donors[0]!);
      filled[i] = nearest?.[i] ?? (i === DIMENSIONS - 1 ? 15 : -3);
    });
    return filled;
  });
}

function meanOf(rows: readonly Float64Array[]): Float64Array {
  const mean = new Float64Array(DIMENSIONS);
  for (const row of rows) for (let i = 0; i < DIMENSIONS; i++) mean[i]! += row[i]! / rows.length;
  return mean;
}

function scatter(rows: readonly Float64Array[], mean: Float64Array): Float64Array {
  const out = new Float64Array(DIMENSIONS * DIMENSIONS);
  for (const row of rows)
    for (let i = 0; i < DIMENSIONS; i++)
      for (let j = 0; j < DIMENSIONS; j++)
        out[i * DIMENSIONS + j]! += ((row[i]! - mean[i]!) * (row[j]! - mean[j]!)) / rows.length;
  return out;
}

const combine = (a: Float64Array, fa: number, b: Float64Array, fb: number) =>
  a.map((x, i) => fa * x + fb * b[i]!);

/** Spread below which no coordinate of a bell falls, and what is added everywhere for waters unlike those in hand. */
const LEAST_VARIANCE = 0.1;
/** Share of the bell over all sources; the sources' own bells share the rest evenly. */
const SHARE_OF_ALL = 0.4;
/** Real waters have heavier tails than a bell: this share of each bell is drawn from one with so many times its variance. */
const TAIL_SHARE = 0.1;
const TAIL_VARIANCE = 4;
/**
 * Limestone with hardly any magnesium is common and lies at the edge of the sources in hand: a bell of its own, with
 * magnesium e^−2.5 of calcium in equivalents. From memory, unverified: Mg/Ca 0.02 to 0.3 in waters from pure limestone.
 */
const LIMESTONE = { share: 0.12, lnMagnesiumOverCalcium: -2.5, variance: 0.6 } as const;

/** Temperature says nothing of the composition: climate and season, not rock. */
const TEMPERATURE_MEAN_C = 15;
const TEMPERATURE_SD_C = 8;

function widened(covariance: Float64Array): Float64Array {
  const out = covariance.slice();
  for (let i = 0; i < DIMENSIONS; i++) out[i * DIMENSIONS + i]! += LEAST_VARIANCE;
  const t = DIMENSIONS - 1;
  for (let i = 0; i < DIMENSIONS; i++) out[i * DIMENSIONS + t] = out[t * DIMENSIONS + i] = 0;
  out[t * DIMENSIONS + t] = TEMPERATURE_SD_C ** 2;
  return out;
}

/** Analyses that make one bell count as this many to it, beside the pooled scatter. */
const SHRINKAGE = 100;

/**
 * Prior over waters from real analyses: one bell a source (its scatter shrunk towards the mean scatter of all sources)
 * and one wide bell over all sources, each source counting the same however many rows it has; limestone and heavy tails
 * beside them. Widths were chosen by leaving one source out: what they cover then is in `complete.test.ts`.
 *
 * Source: the analyses given; by default `reference/real-waters`. Groundwater only: nothing softened or chlorinated.
 */
export function priorFromWaters(waters: readonly RealWater[]): readonly PriorComponent[] {
  const rows = completed(waters);
  const bySource = new Map<string, Float64Array[]>();
  waters.forEach((water, i) => {
    bySource.set(water.source, [...(bySource.get(water.source) ?? []), rows[i]!]);
  });
  const groups = [...bySource].map(([name, members]) => {
    const mean = meanOf(members);
    return { name, mean, scatter: scatter(members, mean), count: members.length };
  });
  const large = groups.filter((group) => group.count >= 10);
  const basis = large.length > 0 ? large : groups;
  const within = basis
    .map((group) => group.scatter)
    .reduce((a, b) => combine(a, 1, b, 1))
    .map((x) => x / basis.length);
  const centre = meanOf(groups.map((group) => group.mean));
  const between = scatter(
    groups.map((group) => group.mean),
    centre,
  );
  const own = groups.map(({ name, mean, scatter: spread, count }) => {
    const trust = count / (count + SHRINKAGE);
    return {
      name,
      weight: (1 - SHARE_OF_ALL) / groups.length,
      mean: mean.with(DIMENSIONS - 1, TEMPERATURE_MEAN_C),
      covariance: widened(combine(spread, trust, within, 1 - trust)),
    };
  });
  const all = {
    name: "all",
    weight: SHARE_OF_ALL,
    mean: centre.with(DIMENSIONS - 1, TEMPERATURE_MEAN_C),
    covariance: widened(combine(within, 1, between, 1)),
  };
  const rocks = [all, ...own].map((bell) => ({ ...bell, weight: bell.weight * (1 - LIMESTONE.share) }));
  return [...rocks, limestone(all)].flatMap(withTail);
}

/** The bell over all sources with magnesium following calcium far below it. */
function limestone({ mean, covariance }: PriorComponent): PriorComponent {
  const [ca, mg] = [COORDINATES.indexOf("Ca"), COORDINATES.indexOf("Mg")];
  const out = covariance.slice();
  for (let i = 0; i < DIMENSIONS; i++)
    out[mg * DIMENSIONS + i] = out[i * DIMENSIONS + mg] = covariance[ca * DIMENSIONS + i]!;
  out[mg * DIMENSIONS + mg] = covariance[ca * DIMENSIONS + ca]! + LIMESTONE.variance;
  return {
    name: "limestone",
    weight: LIMESTONE.share,
    mean: mean.with(mg, mean[ca]! + LIMESTONE.lnMagnesiumOverCalcium),
    covariance: out,
  };
}

const withTail = (bell: PriorComponent): readonly PriorComponent[] => [
  { ...bell, weight: bell.weight * (1 - TAIL_SHARE) },
  {
    name: `${bell.name}, tail`,
    weight: bell.weight * TAIL_SHARE,
    mean: bell.mean,
    covariance: bell.covariance.map((x) => x * TAIL_VARIANCE),
  },
];

let defaultPrior: readonly PriorComponent[] | undefined;

/** The prior of `reference/real-waters`, made once. */
export function realWaterPrior(): readonly PriorComponent[] {
  defaultPrior ??= priorFromWaters(realWaters());
  return defaultPrior;
}
