import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import { operatingPoint } from "./operating-point.ts";
import { type HoldUp, type Standby, standby, usualHoldUp } from "./standby.ts";
import type { Conditions, Unit } from "./unit.ts";

export interface Waste {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

export interface FirstDraw {
  /** Of the first water at the sample valve. */
  readonly firstMgPerL: number;
  readonly steadyMgPerL: number;
  /** First over steady. */
  readonly factor: number;
  /** To run to waste before the dissolved solids are within `within` of steady. */
  readonly litres: Waste;
  readonly minutes: Waste;
  /** As the sample valve runs, middle estimate. */
  readonly course: readonly { readonly litres: number; readonly mgPerL: number }[];
}

export interface FirstDrawQuestion {
  readonly standingHours: number;
  /** Share of the steady reading that the rest may still add; 0.05 when not given. */
  readonly within?: number;
  /** Water between element and sample valve, L; 0.05 when not given (about 1.5 m of small tube). */
  readonly tubeL?: number;
  readonly segments?: number;
}

/** Tubes run nearly as a plug, elements nearly as a stirred vessel; nobody knows better than a factor of about two. */
const courseSteps = 12;

/**
 * First draw after standing: dissolved solids of the first litres, and how long to waste before judging, with its interval.
 *
 * Formula: C(V) = C∞ + (C₀ − C∞)·exp(−(V − V_tube)/V_held), V_held of permeate and, passing through the membrane, of the feed side; waste until
 * the rest is within `within`·C∞; minutes = litres over today's flow to waste
 * Source: creep by `standby`; stirred vessel behind a plug, textbook.
 * Range: permeate to waste, feed on; all of the held water exchanged.
 * Error: interval from held volumes of half to twice the middle (common practice, no source).
 * @example
 * ```ts
 * import { firstDraw, simpleUnit } from "@tapside/reverse-osmosis";
 * const unit = simpleUnit({ areaM2: 2.2, waterLPerM2HBar: 4, saltLPerM2H: 0.65, polarisation: 1.1 }, { ratedLPerH: 60, ratedKPa: 414 });
 * const at = { feedPressureKPaGauge: 414, temperatureC: 25, feedMgPerL: 500, tankPressureKPaGauge: 0 };
 * const draw = firstDraw(unit, at, { standingHours: 54 });
 * draw.kind === "known" ? draw.value.factor : 0; // => 16.48
 * ```
 */
export function firstDraw(
  unit: Unit,
  conditions: Conditions,
  question: FirstDrawQuestion,
): Outcome<FirstDraw> {
  const point = operatingPoint(unit, { ...conditions, tankPressureKPaGauge: 0 }, question);
  if (point.kind === "refused") return point;
  if (point.kind !== "flowing") return refused(point.kind);
  const start = {
    hours: question.standingHours,
    temperatureC: conditions.temperatureC,
    permeateMgPerL: point.permeateMgPerL,
    feedSideMgPerL: (point.feedMgPerL + point.concentrateMgPerL) / 2,
  };
  const steady = { mgPerL: point.permeateMgPerL, lPerMin: point.permeateLPerH / 60 };
  const stood = (end: "low" | "middle" | "high") => standby(unit, { ...start, holdUp: holdUpAt(end) });
  return mapOutcome(stood("low"), (low) =>
    mapOutcome(stood("middle"), (middle) =>
      mapOutcome(stood("high"), (high) => known(drawn(question, steady, { low, middle, high }))),
    ),
  );
}

const holdUpAt = (end: "low" | "middle" | "high"): HoldUp => ({
  permeateLPerM2: usualHoldUp.permeateLPerM2[end],
  feedLPerM2: usualHoldUp.feedLPerM2[end],
});

function drawn(
  question: FirstDrawQuestion,
  steady: { readonly mgPerL: number; readonly lPerMin: number },
  after: Readonly<Record<"low" | "middle" | "high", Standby>>,
): FirstDraw {
  const { within = 0.05, tubeL = 0.05 } = question;
  const excess = (one: Standby) => Math.max(0, one.permeateMgPerL - steady.mgPerL);
  const litresOf = (one: Standby) =>
    excess(one) > within * steady.mgPerL
      ? tubeL + one.permeateHeldL * Math.log(excess(one) / (within * steady.mgPerL))
      : 0;
  const all = [after.low, after.middle, after.high].map(litresOf);
  const litres = { low: Math.min(...all), value: all[1]!, high: Math.max(...all) };
  const minutes = {
    low: litres.low / steady.lPerMin,
    value: litres.value / steady.lPerMin,
    high: litres.high / steady.lPerMin,
  };
  const { middle } = after;
  const at = (v: number) =>
    steady.mgPerL + excess(middle) * Math.exp(-Math.max(0, v - tubeL) / middle.permeateHeldL);
  const end = Math.max(litres.high, 2 * tubeL);
  const course = Array.from({ length: courseSteps + 1 }, (_, i) => {
    const v = (end * i) / courseSteps;
    return { litres: v, mgPerL: at(v) };
  });
  const firstMgPerL = at(0);
  return {
    firstMgPerL,
    steadyMgPerL: steady.mgPerL,
    factor: firstMgPerL / steady.mgPerL,
    litres,
    minutes,
    course,
  };
}
