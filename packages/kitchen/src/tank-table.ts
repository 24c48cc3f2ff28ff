import { known, mapOutcome, type Outcome, refused } from "@tapside/quantities";
import {
  type Conditions,
  type Filling,
  filling,
  shutOffPressureKPaGauge,
  standingPressureKPaGauge,
  storedLitres,
  type Unit,
  usableLitres,
  usualHysteresis,
} from "@tapside/reverse-osmosis";

/** A unit as a day sees it: what it makes and drains at each level of its tank. */
export interface TankTable {
  /** Litres at which the shut-off closes, and below which it opens again. */
  readonly fullL: number;
  readonly reopensL: number;
  /** Litres that stay in the tank when its pressure is the appliances' minimum. */
  readonly floorL: number;
  /** At equal steps of stored litres from 0 to full. */
  readonly madeLPerH: Float64Array;
  readonly drainLPerH: Float64Array;
}

/** The water a unit works at, and what its appliances ask. */
export interface Situation {
  readonly conditions: Omit<Conditions, "tankPressureKPaGauge">;
  readonly staticFeedKPaGauge?: number;
  /** 0 behind a vented tank, whose pump makes the pressure. */
  readonly minimumKPaGauge: number;
}

const STEPS = 32;
/** A vented tank's float lets water in again a tenth lower. Common practice, no source. */
const FLOAT_SHARE = 0.9;

/**
 * What a unit makes and drains at each level of its tank.
 *
 * Formula: `filling` at 8 levels and its two ends, straight lines between; floor = stored − usable litres
 * Source: model of `filling`, `usableLitres`.
 * Range: a unit that fills and shuts off; what prevents it is named. Refused: "minimum-above-full" where the full tank lacks
 * the pressure its appliances ask.
 * Error: below 0.5 % of the litres made.
 */
export function tankTable(unit: Unit, situation: Situation): Outcome<TankTable> {
  const { conditions, staticFeedKPaGauge } = situation;
  const standing =
    staticFeedKPaGauge === undefined
      ? undefined
      : standingPressureKPaGauge(unit, conditions, staticFeedKPaGauge);
  const filled = filling(unit, conditions, {
    segments: 6,
    ...(standing !== undefined && { staticFeedKPaGauge: standing }),
  });
  return mapOutcome(filled, (one) => {
    const level = levels(unit, one, situation.minimumKPaGauge);
    if (!(level.floorL < level.fullL)) return refused("minimum-above-full");
    return known({
      ...level,
      madeLPerH: sampled(one, (point) => point.madeLPerH),
      drainLPerH: sampled(one, (point) => point.drainLPerH),
    });
  });
}

function levels(unit: Unit, filled: Filling, minimumKPaGauge: number) {
  const { storedL: fullL, shutOffKPaGauge } = filled;
  if (unit.storage === "vented") return { fullL, reopensL: FLOAT_SHARE * fullL, floorL: 0 };
  const { ratio, hysteresis = usualHysteresis } = unit.shutOff;
  const opensKPaGauge = shutOffPressureKPaGauge(shutOffKPaGauge / ratio, Math.max(0, ratio - hysteresis));
  const sum = (of: (tank: Unit["tanks"][number]) => number) =>
    unit.tanks.reduce((total, tank) => total + of(tank), 0);
  const swing = { fullKPaGauge: shutOffKPaGauge, minimumKPaGauge };
  return {
    fullL,
    reopensL: sum((tank) => storedLitres(tank, opensKPaGauge, unit.atmosphericKPa)),
    floorL: fullL - sum((tank) => usableLitres(tank, swing, unit.atmosphericKPa)),
  };
}

interface Level {
  readonly storedL: number;
  readonly madeLPerH: number;
  readonly drainLPerH: number;
}

/** Levels of a filling with its ends, then straight lines between at equal steps. */
function sampled(filled: Filling, of: (level: Level) => number): Float64Array {
  const { start, atShutOff, course, storedL } = filled;
  const blend = start.productLPerH / start.permeateLPerH;
  const nodes: Level[] = [
    { storedL: 0, madeLPerH: start.productLPerH, drainLPerH: start.concentrateLPerH },
    ...course.map((one) => ({ ...one, madeLPerH: one.permeateLPerH * blend })),
    { storedL, madeLPerH: atShutOff.productLPerH, drainLPerH: atShutOff.concentrateLPerH },
  ];
  return Float64Array.from({ length: STEPS + 1 }, (_, i) => between(nodes, (i * storedL) / STEPS, of));
}

function between(nodes: readonly Level[], litres: number, of: (level: Level) => number): number {
  const next = nodes.findIndex((node) => node.storedL >= litres);
  if (next <= 0) return of(nodes[next === 0 ? 0 : nodes.length - 1]!);
  const [a, b] = [nodes[next - 1]!, nodes[next]!];
  return of(a) + ((of(b) - of(a)) * (litres - a.storedL)) / (b.storedL - a.storedL);
}
