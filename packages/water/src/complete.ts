import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import { CONSTITUENTS, type ConstituentId, type IonsMgPerL, type WaterAnalysis } from "./analysis.ts";
import { type Conditioner, createConditioner } from "./internal/condition.ts";
import { contradiction } from "./internal/contradiction.ts";
import { COORDINATES, type CoordinateId, DIMENSIONS, MG_PER_UNIT } from "./internal/coordinates.ts";
import { fieldObservations } from "./internal/field-observations.ts";
import { cholesky } from "./internal/linear.ts";
import { type Observation, SLOTS } from "./internal/observations.ts";
import {
  COMPLETED_PHS,
  COMPLETED_TEMPERATURES_C,
  readingRefusal,
  within,
} from "./internal/reading-refusal.ts";
import { normalFrom } from "./internal/seeded.ts";
import { type PriorComponent, realWaterPrior } from "./prior.ts";
import { speciate } from "./speciate.ts";

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

interface Fitting {
  readonly prior?: readonly PriorComponent[];
  /** By default what test kits and meters leave. */
  readonly uncertainty?: ReadingUncertainty;
  /** Exponent on the evidence for a bell; `TRUST_IN_BELLS` unless the choice of it is judged. */
  readonly trust?: number;
}

export interface CompletionOptions extends Fitting {
  /** Uniform numbers in [0, 1), seeded by the caller. */
  readonly random: () => number;
  readonly samples?: number;
}

/** The water at a place of the prior, with ions given as nothing kept at nothing; so is no alkalinity where the pH allows it; acid is kept as read. */
function waterAt(y: Float64Array, readings: FieldReadings): WaterAnalysis {
  const of = (id: CoordinateId) => {
    const i = COORDINATES.indexOf(id);
    return Math.exp(y[i]!) * MG_PER_UNIT[i]!;
  };
  const ions: Partial<Record<ConstituentId, number>> = {};
  for (const id of CONSTITUENTS) ions[id] = readings.ions?.[id] === 0 ? 0 : of(id);
  const water = {
    temperatureC: within(COMPLETED_TEMPERATURES_C, y[DIMENSIONS - 1]!),
    pH: within(COMPLETED_PHS, y[DIMENSIONS - 2]!),
    alkalinityMgPerLCaCO3: of("Alk"),
    ions,
  };
  const alkalinity = readings.alkalinityMgPerLCaCO3;
  if (alkalinity === undefined || alkalinity > 0) return water;
  const asRead = { ...water, alkalinityMgPerLCaCO3: alkalinity };
  return alkalinity < 0 || speciate(asRead).kind === "known" ? asRead : water;
}

/**
 * Exponent on the evidence for a bell: real waters are not bells, so one reading must not rule a source out. Of 0.05, 0.1
 * and 0.2 the one with the best interval score over all four sources left out, each counting as it does in the prior. A
 * source is judged with the one chosen without it (`bench/trust-in-bells.ts`): see `docs/notes/intervals-of-a-new-source.md`.
 */
const TRUST_IN_BELLS = 0.05;

interface Bell {
  readonly component: PriorComponent;
  readonly conditioner: Conditioner;
  /** Its most probable water. */
  readonly best: Float64Array;
  readonly probability: number;
}

function bellsOf(
  prior: readonly PriorComponent[],
  observations: readonly Observation[],
  trust: number,
): Bell[] {
  const made = prior.map((component) => {
    const conditioner = createConditioner(component, observations);
    const best = new Float64Array(DIMENSIONS);
    const log = Math.log(component.weight) + trust * conditioner.evidence(best);
    return { component, conditioner, best, log };
  });
  const top = Math.max(...made.map(({ log }) => log));
  const sum = made.reduce((total, { log }) => total + Math.exp(log - top), 0);
  return made.map(({ log, ...bell }) => ({ ...bell, probability: Math.exp(log - top) / sum }));
}

interface Fitted {
  readonly observations: readonly Observation[];
  readonly bells: readonly Bell[];
}

function fitted(
  readings: FieldReadings,
  { prior = realWaterPrior(), uncertainty = READING_UNCERTAINTY, trust = TRUST_IN_BELLS }: Fitting,
): Outcome<Fitted> {
  const refusal = readingRefusal(readings);
  if (refusal) return refusal;
  const observations = fieldObservations(readings, uncertainty);
  const bells = bellsOf(prior, observations, trust);
  const reading = contradiction(
    observations,
    bells.map(({ best }) => best),
  );
  return reading === undefined ? known({ observations, bells }) : refused("readings-contradict", { reading });
}

/** Waters of which at least one can be; else why not. */
function possible(waters: readonly WaterAnalysis[]): Outcome<readonly WaterAnalysis[]> {
  let why: Outcome<readonly WaterAnalysis[]> = known(waters);
  for (const water of waters) {
    const solved = speciate(water);
    if (solved.kind === "known") return known(waters);
    why = solved;
  }
  return why;
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
 * Range: readings of natural waters, 20–1500 mg/L, pH 5–11, up to 100 °C; elsewhere, to 5000 mg/L or
 * 10 mS/cm, the prior is stretched.
 * Error: stated by the samples.
 * Refused: "not-a-reading", "temperature-out-of-range", "ph-out-of-range", "too-concentrated",
 * "readings-contradict".
 */
export function completeWater(
  readings: FieldReadings,
  options: CompletionOptions,
): Outcome<readonly WaterAnalysis[]> {
  const fit = fitted(readings, options);
  if (fit.kind !== "known") return fit;
  const { bells, observations } = fit.value;
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
  return possible(samples);
}

/**
 * One water in the middle of what readings leave open: the most probable water of each bell, averaged in logarithms by
 * how probable the bells are. Cheaper than samples and without chance, for what must follow a key.
 *
 * Source, Range: as `completeWater`. Error: without an interval; it balances to a few percent; samples rule.
 */
export function centralWater(readings: FieldReadings, options: Fitting = {}): Outcome<WaterAnalysis> {
  return mapOutcome(fitted(readings, options), ({ bells }) => {
    const middle = new Float64Array(DIMENSIONS);
    for (const { best, probability } of bells)
      for (let i = 0; i < DIMENSIONS; i++) middle[i]! += probability * best[i]!;
    const water = waterAt(middle, readings);
    return mapOutcome(possible([water]), () => known(water));
  });
}
