import { COORDINATES, type CoordinateId, coordinate, DIMENSIONS } from "./internal/coordinates.ts";
import { otherKinds } from "./internal/other-kinds.ts";
import { REAL_WATERS_TEXT } from "./internal/real-waters-table.ts";
import { withoutLoss } from "./internal/without-loss.ts";

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

/** Analyses from rows of source, °C, pH, µS/cm at 25 °C and the ions in the order of `FILE_ORDER`; a cell may be empty. */
export function watersFromRows(text: string): readonly RealWater[] {
  return text
    .trim()
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

/** The analyses the default prior is made of. Source: `reference/real-waters`. */
export const realWaters = (): readonly RealWater[] => watersFromRows(REAL_WATERS_TEXT);

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

const sum = (arrays: readonly Float64Array[]) => arrays.reduce((a, b) => combine(a, 1, b, 1));

const combine = (a: Float64Array, fa: number, b: Float64Array, fb: number) =>
  a.map((x, i) => fa * x + fb * b[i]!);

/** Spread below which no coordinate of a bell falls, and what is added everywhere for waters unlike those in hand. */
const LEAST_VARIANCE = 0.1;
/** Share of the bell over all sources; the sources' own bells share the rest. */
const SHARE_OF_ALL = 0.6;
/** A source of so many analyses counts half: two come from one site, and sites differ about as much as sources do. */
const ROWS_OF_HALF_WEIGHT = 4;
/** Temperature says nothing of the composition: climate and season, not rock. Common practice, no source. */
const TEMPERATURE_MEAN_C = 18;
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

interface Group {
  readonly name: string;
  readonly count: number;
  readonly weight: number;
  readonly mean: Float64Array;
  readonly scatter: Float64Array;
}

function groupsOf(waters: readonly RealWater[]): Group[] {
  const rows = completed(waters);
  const bySource = new Map<string, Float64Array[]>();
  waters.forEach((water, i) => {
    bySource.set(water.source, [...(bySource.get(water.source) ?? []), rows[i]!]);
  });
  return [...bySource].map(([name, members]) => {
    const bulk = withoutLoss(members);
    const mean = meanOf(bulk);
    const count = bulk.length;
    return { name, count, weight: count / (count + ROWS_OF_HALF_WEIGHT), mean, scatter: scatter(bulk, mean) };
  });
}

/**
 * Prior over waters from real analyses: one bell a source (its scatter shrunk towards the mean scatter of all sources)
 * and one wide bell over all sources, sources of many rows counting the same; limestone, waters that lost their sulfate
 * and heavy tails beside them. What the intervals cover when a source is left out is in `coverage.test.ts`.
 *
 * Source: the analyses given; by default `reference/real-waters`. Groundwater only: nothing softened or chlorinated.
 */
export function priorFromWaters(waters: readonly RealWater[]): readonly PriorComponent[] {
  const groups = groupsOf(waters);
  const large = groups.filter((group) => group.count >= 10);
  const basis = large.length > 0 ? large : groups;
  const within = sum(basis.map((group) => group.scatter)).map((x) => x / basis.length);
  const total = groups.reduce((all, { weight }) => all + weight, 0);
  const centre = sum(groups.map(({ mean, weight }) => mean.map((x) => (x * weight) / total)));
  const between = sum(
    groups.map(({ mean, weight }) => scatter([mean], centre).map((x) => (x * weight) / total)),
  );
  const own = groups.map(({ name, mean, scatter: spread, count, weight }) => {
    const trust = count / (count + SHRINKAGE);
    return {
      name,
      weight: ((1 - SHARE_OF_ALL) * weight) / total,
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
  return otherKinds(all, own);
}

let defaultPrior: readonly PriorComponent[] | undefined;

/** The prior of `reference/real-waters`, made once. */
export function realWaterPrior(): readonly PriorComponent[] {
  defaultPrior ??= priorFromWaters(realWaters());
  return defaultPrior;
}
