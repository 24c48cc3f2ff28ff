import type { TankTable } from "./tank-table.ts";

/** How a tank stands at the start or the end of a day. */
export interface TankState {
  readonly storedL: number;
  readonly running: boolean;
}

/** What a day did. */
export interface DayAtTank {
  readonly drawnL: number;
  /** Asked for while the tank stood at the appliances' minimum, and not made meanwhile. */
  readonly shortL: number;
  readonly madeL: number;
  readonly drainL: number;
  readonly hoursRunning: number;
  /** Least litres above the appliances' minimum in each clock hour. */
  readonly leastUsableL: Float64Array;
  readonly end: TankState;
}

export interface DayOptions {
  readonly start: TankState;
  /** Times what is asked. */
  readonly times?: number;
  /** Times what the unit makes; the drain stays. */
  readonly strength?: number;
}

const STEPS_A_DAY = 288;
const STEP_H = 24 / STEPS_A_DAY;
const STEPS_AN_HOUR = STEPS_A_DAY / 24;

const at = (table: Float64Array, share: number): number => {
  const place = Math.min(Math.max(share, 0), 1) * (table.length - 1);
  const low = Math.min(Math.floor(place), table.length - 2);
  return table[low]! + (table[low + 1]! - table[low]!) * (place - low);
};

/**
 * One day at the tank in steps of five minutes: it fills while the shut-off is open, gives what is asked as long as its
 * pressure is above the appliances' minimum, and opens and closes the shut-off as it goes.
 *
 * Formula: dV/dt = made(V) − given; given = asked, or what is usable and made where that is less
 * Source: balance of volume; compared with an independent integration in `day-at-tank.test.ts`.
 * Range: asked litres of 288 steps.
 * Error: a draw is spread over its five minutes; peaks of flow within them are not seen.
 */
export function dayAtTank(
  table: TankTable,
  askedL: Float64Array,
  { start, times = 1, strength = 1 }: DayOptions,
): DayAtTank {
  const leastUsableL = new Float64Array(24).fill(Number.POSITIVE_INFINITY);
  const sum = { drawnL: 0, shortL: 0, madeL: 0, drainL: 0, hoursRunning: 0 };
  let { storedL, running } = start;
  for (let step = 0; step < STEPS_A_DAY; step++) {
    const asked = times * askedL[step]!;
    const level = storedL / table.fullL;
    const usable = Math.max(0, storedL - table.floorL);
    const open = running ? 1 : shareOpen(storedL - table.reopensL, asked);
    const could = open * strength * at(table.madeLPerH, level) * STEP_H;
    const given = Math.min(asked, usable + could);
    const kept = Math.min(storedL + could - given, table.fullL);
    const made = kept + given - storedL;
    // Once full it stands: what was not made was not drained.
    const hours = could > 0 ? open * (made / could) * STEP_H : open * STEP_H;
    sum.madeL += made;
    sum.drawnL += given;
    sum.shortL += asked - given;
    sum.drainL += at(table.drainLPerH, level) * hours;
    sum.hoursRunning += hours;
    storedL = kept;
    running = storedL < table.fullL && (open > 0 || storedL <= table.reopensL);
    const hour = Math.floor(step / STEPS_AN_HOUR);
    leastUsableL[hour] = Math.min(leastUsableL[hour]!, Math.max(0, storedL - table.floorL));
  }
  return { ...sum, leastUsableL, end: { storedL, running } };
}

/** Share of a step that is left when what is drawn has opened the shut-off. */
const shareOpen = (aboveReopeningL: number, drawnL: number): number =>
  drawnL > aboveReopeningL ? 1 - Math.max(0, aboveReopeningL) / drawnL : 0;

export const fullTankState = (table: TankTable): TankState => ({ storedL: table.fullL, running: false });

/** Litres asked for, from a list of draws: `atHour` from 0 to below 24. */
export function askedInSteps(draws: readonly { readonly atHour: number; readonly litres: number }[]) {
  const asked = new Float64Array(STEPS_A_DAY);
  for (const { atHour, litres } of draws) {
    const step = Math.min(STEPS_A_DAY - 1, Math.floor(atHour / STEP_H));
    asked[step] = asked[step]! + litres;
  }
  return asked;
}
