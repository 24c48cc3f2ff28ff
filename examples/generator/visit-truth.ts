import { converted } from "@tapside/quantities";
import {
  boosterRiseKPa,
  filling,
  nightRunning,
  operatingPoint,
  standingPressureKPaGauge,
  storedLitres,
  tankPressureKPaGauge,
} from "@tapside/reverse-osmosis";
import { supplyOn } from "./places.ts";
import { situationOf, type UnitState } from "./state.ts";
import { mainOf, type UnitTruth } from "./unit-truth.ts";

/** What every port would show to a perfect instrument. Pressures kPa gauge, flows L/h, dissolved solids mg/L. */
export interface PortTruth {
  readonly feedMgPerL: number;
  readonly temperatureC: number;
  readonly chlorineBefore: number;
  readonly chlorineAfter: number;
  readonly beforeFilterKPa: number;
  readonly afterFilterKPa: number;
  readonly permeateLPerH: number;
  readonly drainLPerH: number;
  readonly permeateMgPerL: number;
  readonly deliveredMgPerL: number;
  readonly tankFullKPa: number;
  readonly drawnL: number;
  readonly tankAfterKPa: number;
  readonly chargeKPa: number;
  readonly drainRunsAtNight: boolean;
  readonly drainAtNightLPerDay: number;
  readonly efficiency: number;
  /** From empty to shut-off. */
  readonly fillingHours: number;
}

/** Feed with nothing flowing stands this much higher. */
const STANDING_KPA = 20;

interface Night {
  readonly tankFullKPa: number;
  readonly runs: boolean;
  readonly drainLPerDay: number;
  readonly madeMgPerL?: number | undefined;
}

/** Behind a float nothing leaks back. */
const SILENT: Night = { tankFullKPa: 0, runs: false, drainLPerDay: 0 };

function nightOf(night: ReturnType<typeof nightRunning>, unit: UnitTruth, day: string): Night {
  if (night.kind !== "known") throw new Error(`no night at ${unit.key} on ${day}: ${JSON.stringify(night)}`);
  const { how, tankKPaGauge, opensAtKPaGauge, closesAtKPaGauge, cycle, drainLPerDay } = night.value;
  return {
    tankFullKPa: tankKPaGauge ?? (how === "cycling" ? opensAtKPaGauge + 5 : closesAtKPaGauge),
    runs: how !== "silent",
    drainLPerDay,
    madeMgPerL: cycle?.madeMgPerL,
  };
}

/** A unit on a day, from the model: flows, dissolved solids, tank, drain. */
export function portTruth(unit: UnitTruth, state: UnitState, day: string, temperatureC: number): PortTruth {
  const { unit: physics, conditions } = situationOf(unit, state, day, temperatureC);
  const { troubles } = state;
  const trouble = (id: string) => troubles.find((one) => one.id === id);
  const point = operatingPoint({ ...physics, blendFraction: 0 }, conditions);
  if (point.kind !== "flowing") throw new Error(`nothing flows at ${unit.key} on ${day}`);
  const standing = conditions.feedPressureKPaGauge + STANDING_KPA;
  const options = {
    staticFeedKPaGauge: standingPressureKPaGauge(physics, conditions, standing),
    segments: 10,
  };
  const { booster } = physics;
  const pumped = booster ? boosterRiseKPa(booster, conditions.feedPressureKPaGauge, point.feedLPerH) : 0;
  const sound = { ...physics, blendFraction: 0, shutOff: { ...physics.shutOff, stuckOpen: false } };
  const filled = filling(sound, conditions, options);
  const night =
    unit.build === "vented" ? SILENT : nightOf(nightRunning(physics, conditions, options), unit, day);
  const made =
    night.madeMgPerL ?? (filled.kind === "known" ? filled.value.meanMgPerL : 1.6 * point.permeateMgPerL);
  const blend = trouble("bypassOpen")?.size ?? 0;
  const tank = physics.tanks[0]!;
  const tanks = physics.tanks.length;
  const stored = tanks * storedLitres(tank, night.tankFullKPa, physics.atmosphericKPa);
  const drawnL = Math.max(0.5, Math.min(8, Math.floor(stored) / 2));
  const supply = supplyOn(mainOf(unit), day);
  const passes = trouble("carbonSpent")?.size ?? (trouble("oxidisedMembrane") ? 0.5 : 0);
  return {
    feedMgPerL: conditions.feedMgPerL,
    temperatureC,
    chlorineBefore: supply.chlorine,
    chlorineAfter: supply.chlorine * passes,
    beforeFilterKPa: conditions.feedPressureKPaGauge,
    afterFilterKPa: point.elementPressureKPaGauge - pumped,
    permeateLPerH: point.permeateLPerH,
    drainLPerH: point.concentrateLPerH,
    permeateMgPerL: point.permeateMgPerL,
    deliveredMgPerL: (1 - blend) * made + blend * conditions.feedMgPerL + (unit.remineraliser ? 45 : 0),
    tankFullKPa: night.tankFullKPa,
    drawnL,
    tankAfterKPa: Math.max(
      0,
      tankPressureKPaGauge(tank, Math.max(0, stored - drawnL) / tanks, physics.atmosphericKPa),
    ),
    chargeKPa: converted(state.chargePsi, "psi", "kPa"),
    drainRunsAtNight: night.runs,
    drainAtNightLPerDay: night.drainLPerDay,
    efficiency: filled.kind === "known" ? filled.value.efficiency : 0.15,
    fillingHours: filled.kind === "known" ? filled.value.hours : 0,
  };
}
