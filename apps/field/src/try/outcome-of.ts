import type { UnitAsRead } from "@tapside/assessment";
import { known, mapOutcome, type Outcome } from "@tapside/quantities";
import {
  type ElementPlace,
  elementProfile,
  type Filling,
  filling,
  standingPressureKPaGauge,
  usableLitres,
} from "@tapside/reverse-osmosis";

/** What a unit does at its water: one filling, what comes out of the tank, the element's length. */
export interface TriedOutcome {
  readonly hours: number;
  readonly storedL: number;
  readonly usableL: number;
  readonly volumeL: number;
  readonly deliveredMgPerL: number;
  readonly recovery: number;
  readonly course: readonly { readonly hours: number; readonly kPa: number; readonly lPerMin: number }[];
  readonly element: readonly ElementPlace[];
}

const panels = 2;

export function outcomeOf({
  unit,
  conditions,
  staticFeedKPaGauge,
  minimumKPaGauge,
}: UnitAsRead): Outcome<TriedOutcome> {
  const options = {
    panels,
    segments: 10,
    ...(staticFeedKPaGauge !== undefined && {
      staticFeedKPaGauge: standingPressureKPaGauge(unit, conditions, staticFeedKPaGauge),
    }),
  };
  return mapOutcome(elementProfile(unit, conditions), (element) =>
    mapOutcome(filling(unit, conditions, options), (filled) => {
      const swing = { fullKPaGauge: filled.shutOffKPaGauge, minimumKPaGauge };
      const usable =
        unit.storage === "vented"
          ? [filled.storedL]
          : unit.tanks.map((tank) => usableLitres(tank, swing, unit.atmosphericKPa));
      return known({
        hours: filled.hours,
        storedL: filled.storedL,
        usableL: usable.reduce((a, b) => a + b, 0),
        volumeL: unit.tanks.reduce((sum, tank) => sum + tank.volumeL, 0),
        deliveredMgPerL: filled.meanMgPerL,
        recovery: filled.recoveryAtStart,
        course: inTime(filled),
        element,
      });
    }),
  );
}

/** The filling against time: each step takes its litres over the mean of the flows at its ends, scaled to the filling's own hours. */
function inTime(filled: Filling): TriedOutcome["course"] {
  const steps = filled.course.map(({ storedL, tankKPaGauge, permeateLPerH }) => ({
    storedL,
    kPa: tankKPaGauge,
    lPerH: permeateLPerH,
  }));
  const fromL = steps[0]!.storedL;
  let hours = 0;
  const course = steps.map((one, i) => {
    const before = steps[i - 1];
    if (before) hours += ((one.storedL - before.storedL) * (1 / one.lPerH + 1 / before.lPerH)) / 2;
    return { hours, kPa: one.kPa, lPerMin: one.lPerH / 60 };
  });
  const toL = steps.at(-1)!.storedL;
  const scale = hours > 0 ? (filled.hours * (toL - fromL)) / (filled.storedL * hours) : 1;
  return course.map((one) => ({ ...one, hours: one.hours * Math.max(1, scale) }));
}
