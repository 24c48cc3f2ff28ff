import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import { type FillingOptions, filling } from "./filling.ts";
import { bracketedRoot } from "./internal/bracketed-root.ts";
import { litresInTanks } from "./internal/tanks.ts";
import { type NightRunning, nightRunning } from "./night-running.ts";
import { operatingPoint } from "./operating-point.ts";
import { shutOffPressureKPaGauge, usualHysteresis } from "./shut-off.ts";
import { standby } from "./standby.ts";
import { standingLeakLPerH } from "./standing-leak.ts";
import type { Conditions, Unit } from "./unit.ts";

/** What is seen or heard dripping, with the tank full: at a tap behind the tank, or at the drain through the check valve. */
export interface Leak {
  readonly at: "tap" | "checkValve";
  readonly lPerH: number;
}

export interface LeakyNight {
  readonly how: NightRunning["how"];
  /** How often the unit begins to fill; none while it never stops. Low and high for a shut-off that does not say when it opens again. */
  readonly starts: { readonly low: number; readonly value: number; readonly high: number };
  readonly drainL: number;
  /** Lost at the tap. */
  readonly tapL: number;
  /** Of the first water from the tank, and of the same without the leak. */
  readonly firstMgPerL: number;
  readonly soundMgPerL: number;
  /** Litres in the tank and litres to the drain, phase by phase. */
  readonly course: readonly { readonly hours: number; readonly storedL: number; readonly drainL: number }[];
}

export interface LeakQuestion {
  readonly leak: Leak;
  /** Hours nobody draws. */
  readonly hours: number;
  readonly staticFeedKPaGauge?: number;
}

type Standing = Omit<Conditions, "tankPressureKPaGauge">;

/** Between full and opening again, as a share of the feed pressure, of valves in use. Common practice, no source. */
const HYSTERESIS = { low: 0.05, high: 0.15 } as const;
const FILLING: FillingOptions = { panels: 2, segments: 10 };
const SEGMENTS = 10;
const MOST_PHASES = 2000;

/**
 * A night in which something drips: how often the unit starts, what runs to the drain, what the first water is like.
 *
 * Formula: phases of `nightRunning` one after the other from a full tank; the tank is stirred, each start brings what is made near the full
 * tank and, behind a dripping tap, the salt that crept into the element since; C = made + (C₀ − made)(1 − swing/full)^starts
 * Source: Boyle's law, `operatingPoint`, `standby`.
 * Range: nobody draws; pressurised tank, full when the night begins.
 * Error: starts as the shut-off's own hysteresis is known (low and high are told); litres about 10 %.
 * @example
 * ```ts
 * import { nightOfLeak, simpleUnit } from "@tapside/reverse-osmosis";
 * const tank = { volumeL: 53, airChargeKPaGauge: 62 };
 * const unit = simpleUnit({ areaM2: 1.1, waterLPerM2HBar: 4.3, saltLPerM2H: 0.66 }, { ratedLPerH: 35, ratedKPa: 414 }, tank);
 * const night = nightOfLeak(unit, { feedPressureKPaGauge: 400, temperatureC: 21, feedMgPerL: 265 }, { leak: { at: "tap", lPerH: 3 }, hours: 10 });
 * night.kind === "known" ? night.value.tapL : 0; // => 30
 * ```
 */
export function nightOfLeak(unit: Unit, standing: Standing, question: LeakQuestion): Outcome<LeakyNight> {
  const { leak, hours } = question;
  if (!(leak.lPerH >= 0)) return refused("out-of-range", { name: "leak", value: leak.lPerH });
  const feed = question.staticFeedKPaGauge ?? standing.feedPressureKPaGauge;
  return mapOutcome(withLeak(unit, leak, { feed, temperatureC: standing.temperatureC }), (leaky) => {
    const of = (hysteresis: number) =>
      nightRunning({ ...leaky, shutOff: { ...unit.shutOff, hysteresis } }, standing, {
        segments: SEGMENTS,
        staticFeedKPaGauge: feed,
        tapLeakLPerH: leak.at === "tap" ? leak.lPerH : 0,
      });
    const { hysteresis } = unit.shutOff;
    return mapOutcome(of(hysteresis ?? usualHysteresis), (night) =>
      mapOutcome(filling(unit, standing, { ...FILLING, staticFeedKPaGauge: feed }), ({ meanMgPerL }) => {
        const ends =
          hysteresis === undefined ? [of(HYSTERESIS.high), of(HYSTERESIS.low)] : [known(night), known(night)];
        const all = [night, ...ends.flatMap((one) => (one.kind === "known" ? [one.value] : []))].map((one) =>
          startsIn(one, hours),
        );
        const value = all[0]!;
        const starts = { low: Math.min(...all), value, high: Math.max(...all) };
        const fullL = litresInTanks(unit, night.closesAtKPaGauge);
        const first = firstWater(unit, standing, { night, leak, hours, starts: value, fullL, meanMgPerL });
        return known({
          how: night.how,
          starts,
          tapL: leak.at === "tap" ? leak.lPerH * hours : 0,
          firstMgPerL: first,
          soundMgPerL: meanMgPerL,
          ...courseOf(unit, night, { hours, fullL }),
        });
      }),
    );
  });
}

/** Membranes pass so much back that no check valve could be told of it. */
const LOG_VALVE = { low: -6, high: 6 } as const;

/** The unit with a check valve that passes so much back from the full tank. */
function withLeak(
  unit: Unit,
  { at, lPerH }: Leak,
  { feed, temperatureC }: { readonly feed: number; readonly temperatureC: number },
): Outcome<Unit> {
  if (at === "tap" || !(lPerH > 0)) return known(unit);
  const fullKPa = shutOffPressureKPaGauge(feed, unit.shutOff.ratio);
  const leaky = (logValve: number): Unit => ({ ...unit, backLeakLPerHBar: 10 ** logValve });
  const passed = (logValve: number) => standingLeakLPerH(leaky(logValve), fullKPa, temperatureC);
  const mostLPerH = passed(LOG_VALVE.high);
  if (!(lPerH < mostLPerH)) return refused("leak-above-membrane", { mLPerMin: Math.floor(mostLPerH / 0.06) });
  const root = bracketedRoot((log) => passed(log) - lPerH, LOG_VALVE.low, LOG_VALVE.high, {
    x: 1e-9,
    f: 1e-9 * lPerH,
  });
  return known(leaky(root.kind === "no-sign-change" ? LOG_VALVE.low : root.x));
}

/** Begins to fill when it has leaked to where the shut-off opens, and again after every whole cycle. */
function startsIn({ cycle }: NightRunning, hours: number): number {
  if (!cycle || hours < cycle.leakingHours) return 0;
  return 1 + Math.floor((hours - cycle.leakingHours) / cycle.hours);
}

interface Asked {
  readonly night: NightRunning;
  readonly leak: Leak;
  readonly hours: number;
  readonly starts: number;
  readonly fullL: number;
  readonly meanMgPerL: number;
}

function firstWater(unit: Unit, standing: Standing, asked: Asked): number {
  const { night, leak, hours, starts, fullL, meanMgPerL } = asked;
  const toward = (made: number, left: number) => made + (meanMgPerL - made) * left;
  if (night.madeMgPerL !== undefined)
    return toward(night.madeMgPerL, Math.exp((-leak.lPerH * hours) / fullL));
  if (!night.cycle || starts === 0) return meanMgPerL;
  const { cycle } = night;
  const madeL = cycle.swingL + (leak.at === "tap" ? leak.lPerH * cycle.fillingHours : 0);
  const made = cycle.madeMgPerL + (leak.at === "tap" ? creptMg(unit, standing, night) / madeL : 0);
  return toward(made, (1 - cycle.swingL / fullL) ** starts);
}

/** Salt that creeps into the permeate side between two starts, mg. Behind a leaking check valve tank water washes it back. */
function creptMg(unit: Unit, standing: Standing, { cycle, closesAtKPaGauge }: NightRunning): number {
  const point = operatingPoint(unit, { ...standing, tankPressureKPaGauge: closesAtKPaGauge });
  if (!cycle || point.kind !== "flowing") return 0;
  const stood = standby(unit, {
    hours: cycle.leakingHours,
    temperatureC: standing.temperatureC,
    permeateMgPerL: point.permeateMgPerL,
    feedSideMgPerL: (point.feedMgPerL + point.concentrateMgPerL) / 2,
  });
  if (stood.kind !== "known") return 0;
  return stood.value.permeateHeldL * (stood.value.permeateMgPerL - point.permeateMgPerL);
}

/** The tank falls and rises, the drain only grows. */
function courseOf(
  unit: Unit,
  night: NightRunning,
  { hours, fullL }: { readonly hours: number; readonly fullL: number },
): Pick<LeakyNight, "course" | "drainL"> {
  const { cycle } = night;
  const course = [{ hours: 0, storedL: fullL, drainL: 0 }];
  if (!cycle) {
    const drainL = (night.drainLPerDay * hours) / 24;
    const storedL = night.tankKPaGauge === undefined ? fullL : litresInTanks(unit, night.tankKPaGauge);
    return { course: [...course, { hours, storedL, drainL }], drainL };
  }
  const phases = [
    { takes: cycle.leakingHours, storedL: fullL - cycle.swingL, drainLPerH: cycle.drainLeakingLPerH },
    { takes: cycle.fillingHours, storedL: fullL, drainLPerH: cycle.drainFillingLPerH },
  ];
  let here = course[0]!;
  for (let n = 0; here.hours < hours && n < MOST_PHASES; n++) {
    const phase = phases[n % 2]!;
    const share = Math.min(1, (hours - here.hours) / phase.takes);
    here = {
      hours: share < 1 ? hours : here.hours + phase.takes,
      storedL: here.storedL + share * (phase.storedL - here.storedL),
      drainL: here.drainL + share * phase.takes * phase.drainLPerH,
    };
    course.push(here);
  }
  if (here.hours < hours)
    course.push({ ...here, hours, drainL: here.drainL + ((hours - here.hours) * night.drainLPerDay) / 24 });
  return { course, drainL: course.at(-1)!.drainL };
}
