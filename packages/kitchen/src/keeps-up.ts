import { known, type Outcome, quantile, refused, type Uncertain } from "@tapside/quantities";
import { type DayAtTank, type DayOptions, dayAtTank, fullTankState } from "./day-at-tank.ts";
import { drawnDays } from "./drawn-days.ts";
import type { TankTable } from "./tank-table.ts";
import { askedOf, type Use } from "./use.ts";

/** Five, fifty and ninety-five of a hundred. */
export interface Band {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/** Whether a unit keeps up with a kitchen. */
export interface KeepsUp {
  /** What it serves on a busy day in the hours told, L; the band is of what is not known of the unit. */
  readonly serves: Band;
  /** What the kitchen asks on a busy day, L. */
  readonly asked: Uncertain;
  /** How far the one lies beyond the other, in what is not known of both: below −1 it keeps up, above 1 it runs short. */
  readonly distance: number;
  readonly verdict: "keepsUp" | "tooCloseToSay" | "short";
  /** The busy days as told: share that run short, and what is missing on those. */
  readonly daysShort: number;
  readonly shortL: Band;
  /** Least litres above the appliances' minimum, by clock hour, and the hour in which the tank stands lowest. */
  readonly usableByHour: readonly Band[];
  readonly tightestHour: number;
  readonly drainLPerDay: number;
  readonly hoursRunning: number;
}

/** One busy day in twenty: a unit may run short this often and still serve its kitchen. Office rule, no source. */
export const DAYS_ALLOWED_SHORT = 0.05;
/** Less than this goes unnoticed, L. Common practice, no source. */
const NOTICED_L = 1;
/** Of 100: nine in ten lie within so many standard uncertainties. */
const Z90 = 1.645;

/**
 * A unit as read makes what it made; a nameplate is good to about 15 %. A permeate pump's own numbers, and where such a unit is shut off,
 * are assumed: that much besides, in squares. Common practice, no source.
 */
export const MADE_RELATIVE = { read: 0.07, nameplate: 0.15, permeatePump: 0.1 } as const;

export interface KeepsUpOptions {
  readonly seed?: number;
  readonly days?: number;
  /** Relative standard uncertainty of what the unit makes. */
  readonly madeRelative?: number;
}

/**
 * What a unit serves on a busy day, and whether that is what its kitchen asks.
 *
 * Formula: `dayAtTank` over drawn busy days after one another; serves = the litres a day, spread as told, at which one day
 * in twenty runs short; kept up with when ln(serves/asked) is above 1.645 of its standard uncertainty, short when below −1.645
 * Source: the balance of volume; chance of draws within the hours told.
 * Range: from a millionth to a million times the litres told. Refused: "no-use" with none told.
 * Error: counting of days (120 by default: about 3 % of the litres) beside the band, which says what is not known.
 */
export function keepsUp(
  table: TankTable,
  uses: readonly Use[],
  { seed = 1, days = 120, madeRelative = MADE_RELATIVE.read }: KeepsUpOptions = {},
): Outcome<KeepsUp> {
  const asked = askedOf(uses);
  if (!(asked.value > 0)) return refused("no-use");
  const drawn = drawnDays(uses, days + 1, seed);
  const spread = Math.exp(Z90 * madeRelative);
  const weak = mostTimes(table, drawn, 1 / spread, 1);
  const strong = mostTimes(table, drawn, spread, weak);
  const serves = {
    low: asked.value * weak,
    value: asked.value * Math.sqrt(weak * strong),
    high: asked.value * strong,
  };
  const lived = [...daysOf(table, drawn)];
  const distance = distanceOf(serves, asked);
  return known({ serves, asked, distance, verdict: verdictOf(distance), ...summary(lived) });
}

/** Days after one another; the first, with a full tank, only leads in. */
function* daysOf(
  table: TankTable,
  [first, ...rest]: readonly Float64Array[],
  options: Omit<DayOptions, "start"> = {},
): Generator<DayAtTank> {
  let { end: start } = dayAtTank(table, first!, { ...options, start: fullTankState(table) });
  for (const asked of rest) {
    const day = dayAtTank(table, asked, { ...options, start });
    start = day.end;
    yield day;
  }
}

const isShort = (day: DayAtTank): boolean => day.shortL > NOTICED_L;

/** Whether more than the allowed share runs short; stops counting when that is sure. */
function runsShort(days: Iterable<DayAtTank>, count: number): boolean {
  let short = 0;
  for (const day of days) {
    if (isShort(day)) short++;
    if (short > DAYS_ALLOWED_SHORT * count) return true;
  }
  return false;
}

/** Beyond this many times the litres told, or this small a part, no answer is looked for. */
const WIDEST = 1e6;

/** How many times the litres told can be served: from a guess in growing steps until it is enclosed, then halving. */
function mostTimes(
  table: TankTable,
  drawn: readonly Float64Array[],
  strength: number,
  guess: number,
): number {
  const enough = (times: number) => !runsShort(daysOf(table, drawn, { times, strength }), drawn.length - 1);
  const up = enough(guess);
  let [low, high] = [guess, guess];
  for (let step = 1.15; low > 1 / WIDEST && high < WIDEST; step *= step) {
    if (up) high *= step;
    else low /= step;
    if (enough(up ? high : low) !== up) break;
    if (up) low = high;
    else high = low;
  }
  while (high / low > 1.01) {
    const middle = Math.sqrt(low * high);
    if (enough(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** How far what is asked lies beyond what is served, in what is not known of both: above 1 surely beyond. */
function distanceOf(serves: Band, asked: Uncertain): number {
  const u = Math.hypot(Math.log(serves.high / serves.low) / (2 * Z90), asked.u / asked.value);
  return Math.log(asked.value / serves.value) / Math.max(Z90 * u, 1e-9);
}

function verdictOf(distance: number): KeepsUp["verdict"] {
  if (distance < -1) return "keepsUp";
  return distance > 1 ? "short" : "tooCloseToSay";
}

const bandOf = (values: readonly number[]): Band =>
  values.length === 0
    ? { low: 0, value: 0, high: 0 }
    : { low: quantile(values, 0.05), value: quantile(values, 0.5), high: quantile(values, 0.95) };

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function summary(days: readonly DayAtTank[]) {
  const usableByHour = Array.from({ length: 24 }, (_, hour) =>
    bandOf(days.map((day) => day.leastUsableL[hour]!)),
  );
  return {
    daysShort: days.filter(isShort).length / days.length,
    shortL: bandOf(days.filter(isShort).map((day) => day.shortL)),
    usableByHour,
    tightestHour: tightestOf(usableByHour),
    drainLPerDay: meanOf(days.map((day) => day.drainL)),
    hoursRunning: meanOf(days.map((day) => day.hoursRunning)),
  };
}

/** Lowest on a bad day; of equally low hours the lowest on an ordinary one. */
const tightestOf = (byHour: readonly Band[]): number =>
  byHour.reduce((best, { low, value }, hour) => {
    const than = byHour[best]!;
    return low < than.low || (low === than.low && value < than.value) ? hour : best;
  }, 0);
