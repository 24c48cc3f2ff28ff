import { known, type Outcome, refused } from "@tapside/quantities";
import { CONSTITUENTS, type ConstituentId, type IonsMgPerL, type WaterAnalysis } from "./analysis.ts";
import { type Conditioner, createConditioner } from "./internal/condition.ts";
import {
  COORDINATES,
  type CoordinateId,
  coordinate,
  DIMENSIONS,
  MG_PER_UNIT,
} from "./internal/coordinates.ts";
import { cholesky } from "./internal/linear.ts";
import {
  chargeBalance,
  conductivitySeen,
  hardnessSeen,
  type Observation,
  SLOTS,
  seen,
  tdsSeen,
} from "./internal/observations.ts";
import { normalFrom } from "./internal/seeded.ts";
import { type PriorComponent, realWaterPrior } from "./prior.ts";

/** What was read in the field or reported; anything may be absent. */
export interface FieldReadings {
  readonly temperatureC?: number;
  readonly pH?: number;
  readonly alkalinityMgPerLCaCO3?: number;
  readonly hardnessMgPerLCaCO3?: number;
  readonly ec25UsPerCm?: number;
  /** Dissolved solids by evaporation (sum of ions with bicarbonate halved), not a meter's scale. */
  readonly tdsMgPerL?: number;
  readonly ions?: IonsMgPerL;
  /** Relative standard uncertainty of a named figure that is known worse, such as a yearly mean with its range. */
  readonly spread?: Readonly<Record<string, number>>;
}

/** Standard uncertainties taken for readings: relative; of pH and °C absolute. */
export interface ReadingUncertainty {
  readonly ion: number;
  readonly alkalinity: number;
  readonly hardness: number;
  readonly conductivity: number;
  readonly tds: number;
  readonly pH: number;
  readonly temperatureC: number;
  /** Of ln(cations/anions) in a sound analysis; conductivity's holds model and meter: as far as the real analyses miss (rms). */
  readonly chargeBalance: number;
}

/** Readings with test kits and meters at a tap (common practice, no source). */
export const READING_UNCERTAINTY: ReadingUncertainty = {
  ion: 0.04,
  alkalinity: 0.04,
  hardness: 0.04,
  conductivity: 0.085,
  tds: 0.1,
  pH: 0.06,
  temperatureC: 0.3,
  chargeBalance: 0.05,
};

/** Figures of one laboratory's analysis: what stands beside them in the same report was measured on the same bottle. */
export const LABORATORY_UNCERTAINTY: ReadingUncertainty = {
  ion: 0.01,
  alkalinity: 0.01,
  hardness: 0.01,
  conductivity: 0.085,
  tds: 0.1,
  pH: 0.045,
  temperatureC: 0.1,
  chargeBalance: 0.05,
};

export interface CompletionOptions {
  /** Uniform numbers in [0, 1), seeded by the caller. */
  readonly random: () => number;
  readonly samples?: number;
  readonly prior?: readonly PriorComponent[];
  /** By default what test kits and meters leave. */
  readonly uncertainty?: ReadingUncertainty;
}

function fieldObservations(readings: FieldReadings, u: ReadingUncertainty): Observation[] {
  const wide = (name: string, sd: number) => Math.hypot(sd, readings.spread?.[name] ?? 0);
  const out: Observation[] = [chargeBalance(u.chargeBalance)];
  const { hardnessMgPerLCaCO3: hardness, ec25UsPerCm: ec, tdsMgPerL: tds } = readings;
  if (hardness !== undefined)
    out.push(hardnessSeen(Math.max(hardness, 0.05), wide("hardnessMgPerLCaCO3", u.hardness)));
  if (ec !== undefined) out.push(conductivitySeen(Math.max(ec, 0.5), wide("ec25UsPerCm", u.conductivity)));
  if (tds !== undefined) out.push(tdsSeen(Math.max(tds, 0.5), wide("tdsMgPerL", u.tds)));
  const put = (id: CoordinateId, value: number | undefined, sd: number) => {
    const at = coordinate(id, value);
    if (at !== undefined) out.push(seen(id, at, sd));
  };
  put("temperatureC", readings.temperatureC, wide("temperatureC", u.temperatureC));
  put("pH", readings.pH, wide("pH", u.pH));
  put("Alk", readings.alkalinityMgPerLCaCO3, wide("alkalinityMgPerLCaCO3", u.alkalinity));
  for (const id of CONSTITUENTS) put(id, readings.ions?.[id], wide(id, u.ion));
  return out;
}

function badReading(readings: FieldReadings): string | undefined {
  const { ions, spread: _, ...rest } = readings;
  for (const [name, value] of Object.entries({ ...rest, ...ions })) {
    if (value === undefined) continue;
    if (!Number.isFinite(value) || (value < 0 && name !== "alkalinityMgPerLCaCO3")) return name;
  }
  return undefined;
}

/** The water at a place of the prior, with readings given as nothing kept at nothing. */
function waterAt(y: Float64Array, readings: FieldReadings): WaterAnalysis {
  const of = (id: CoordinateId) => {
    const i = COORDINATES.indexOf(id);
    return Math.exp(y[i]!) * MG_PER_UNIT[i]!;
  };
  const ions: Partial<Record<ConstituentId, number>> = {};
  for (const id of CONSTITUENTS) ions[id] = readings.ions?.[id] === 0 ? 0 : of(id);
  return {
    temperatureC: Math.min(Math.max(y[DIMENSIONS - 1]!, 0), 60),
    pH: Math.min(Math.max(y[DIMENSIONS - 2]!, 4), 11),
    alkalinityMgPerLCaCO3: of("Alk"),
    ions,
  };
}

/** Exponent on the evidence for a bell: real waters are not bells, so one reading must not rule a source out. */
const TRUST_IN_BELLS = 0.1;

interface Bell {
  readonly component: PriorComponent;
  readonly conditioner: Conditioner;
  /** Its most probable water. */
  readonly best: Float64Array;
  readonly probability: number;
}

function bellsOf(prior: readonly PriorComponent[], observations: readonly Observation[]): Bell[] {
  const made = prior.map((component) => {
    const conditioner = createConditioner(component, observations);
    const best = new Float64Array(DIMENSIONS);
    const log = Math.log(component.weight) + TRUST_IN_BELLS * conditioner.evidence(best);
    return { component, conditioner, best, log };
  });
  const top = Math.max(...made.map(({ log }) => log));
  const sum = made.reduce((total, { log }) => total + Math.exp(log - top), 0);
  return made.map(({ log, ...bell }) => ({ ...bell, probability: Math.exp(log - top) / sum }));
}

/** A draw takes as many chance numbers whatever was read, so that a reading more moves the others' samples no further than it must. */
function drawOf(
  bell: Bell,
  factor: Float64Array,
  normal: () => number,
  slots: readonly number[],
): Float64Array {
  const z = Float64Array.from({ length: DIMENSIONS }, normal);
  const y0 = bell.component.mean.slice();
  for (let i = 0; i < DIMENSIONS; i++)
    for (let k = 0; k <= i; k++) y0[i]! += factor[i * DIMENSIONS + k]! * z[k]!;
  const chance = Float64Array.from({ length: SLOTS }, normal);
  const disturbance = Float64Array.from(slots, (slot) => chance[slot]!);
  const y = new Float64Array(DIMENSIONS);
  bell.conditioner.onto(y0, disturbance, y);
  return y;
}

/**
 * Completes a water from readings: equally likely analyses that agree with what was read (within its uncertainty),
 * with charge balance and conductivity, and otherwise look like real waters. Every index computed over the samples
 * carries an honest interval; the samples are never fact.
 *
 * Source: prior from `reference/real-waters` (U.S. Geological Survey; openwashdata Kwale, CC BY 4.0; Irawan and
 * Putranto, Semarang), sources of many rows weighing the same. Groundwater: nothing softened, chlorinated or treated.
 * Range: readings of natural waters, 20–1500 mg/L; elsewhere the prior is stretched.
 * Error: stated by the samples.
 */
export function completeWater(
  readings: FieldReadings,
  options: CompletionOptions,
): Outcome<readonly WaterAnalysis[]> {
  const bad = badReading(readings);
  if (bad !== undefined) return refused("not-a-reading", { reading: bad });
  const observations = fieldObservations(readings, options.uncertainty ?? READING_UNCERTAINTY);
  const bells = bellsOf(options.prior ?? realWaterPrior(), observations);
  const normal = normalFrom(options.random);
  const slots = observations.map(({ slot }) => slot);
  const count = options.samples ?? 400;
  const samples: WaterAnalysis[] = [];
  let used = 0;
  let before = 0;
  for (const bell of bells) {
    used += bell.probability;
    const until = bell === bells[bells.length - 1] ? count : Math.round(used * count);
    const factor = until > before ? cholesky(bell.component.covariance, DIMENSIONS) : new Float64Array(0);
    for (let i = before; i < until; i++) samples.push(waterAt(drawOf(bell, factor, normal, slots), readings));
    before = Math.max(before, until);
  }
  return known(samples);
}

/**
 * One water in the middle of what readings leave open: the most probable water of each bell, averaged in logarithms by
 * how probable the bells are. Cheaper than samples and without chance, for what must follow a key.
 *
 * Source, Range: as `completeWater`. Error: without an interval; it balances to a few percent; samples rule.
 */
export function centralWater(
  readings: FieldReadings,
  options: Pick<CompletionOptions, "prior" | "uncertainty"> = {},
): Outcome<WaterAnalysis> {
  const bad = badReading(readings);
  if (bad !== undefined) return refused("not-a-reading", { reading: bad });
  const observations = fieldObservations(readings, options.uncertainty ?? READING_UNCERTAINTY);
  const middle = new Float64Array(DIMENSIONS);
  for (const { best, probability } of bellsOf(options.prior ?? realWaterPrior(), observations))
    for (let i = 0; i < DIMENSIONS; i++) middle[i]! += probability * best[i]!;
  return known(waterAt(middle, readings));
}
