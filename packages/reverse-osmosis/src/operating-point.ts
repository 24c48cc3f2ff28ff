import { type Refused, refused } from "@tapside/quantities";
import { bracketedRoot, fallingRoot } from "./internal/bracketed-root.ts";
import { type ElementsEnd, elementsFlow } from "./internal/elements-flow.ts";
import { feedSide } from "./internal/feed-side.ts";
import { restrictorLPerH } from "./restrictor.ts";
import type { Conditions, Unit } from "./unit.ts";

/** Flows, pressures and concentrations at every port with permeate running. */
export interface FlowingPoint {
  readonly kind: "flowing";
  /** At the element's feed side, after cartridges and booster. */
  readonly elementPressureKPaGauge: number;
  readonly concentratePressureKPaGauge: number;
  readonly feedLPerH: number;
  readonly feedMgPerL: number;
  readonly permeateLPerH: number;
  readonly permeateMgPerL: number;
  readonly concentrateLPerH: number;
  readonly concentrateMgPerL: number;
  /** Permeate over feed, as a fraction. Not efficiency, which counts a whole filling. */
  readonly recovery: number;
  /** 1 − permeate/feed concentration, as a fraction. */
  readonly rejection: number;
}

/** Water passes to the drain but none through the element. */
export interface IdlePoint {
  readonly kind: "no-flow" | "tank-above-feed";
  readonly elementPressureKPaGauge: number;
  readonly feedLPerH: number;
  readonly concentrateLPerH: number;
}

export type OperatingPoint = FlowingPoint | IdlePoint | Refused;

export interface OperatingOptions {
  /** Steps along the element; 20 is good to 0.01 % at ordinary recoveries. */
  readonly segments?: number;
}

const ranges = {
  feedPressureKPaGauge: [0, 2000],
  temperatureC: [0, 45],
  feedMgPerL: [0, 50_000],
  tankPressureKPaGauge: [0, 2000],
} as const satisfies Record<keyof Conditions, readonly [number, number]>;

function outOfRange(conditions: Conditions): Refused | undefined {
  for (const [name, [low, high]] of Object.entries(ranges)) {
    const value = conditions[name as keyof Conditions];
    if (!(value >= low && value <= high)) return refused("out-of-range", { name, value, low, high });
  }
  return undefined;
}

function idle(unit: Unit, conditions: Conditions, kind: IdlePoint["kind"]): IdlePoint {
  const side = feedSide(unit, conditions);
  const drain = (feedLPerH: number) =>
    restrictorLPerH(unit.restrictor, side.elementKPa(feedLPerH), conditions.temperatureC);
  const most = drain(0);
  const root = bracketedRoot((q) => drain(q) - q, 0, most, { x: 1e-12, f: 1e-10 * Math.max(most, 1) });
  const flow = root.kind === "no-sign-change" ? most : root.x;
  return { kind, elementPressureKPaGauge: side.elementKPa(flow), feedLPerH: flow, concentrateLPerH: flow };
}

/**
 * Where the unit settles at given pressures, temperature and water: flow, pressure and dissolved solids at every port.
 *
 * Formula: one unknown, the feed flow Q, with permeate(Q, P(Q)) + restrictor(P(Q)) − Q = 0; P(Q) is what cartridges, tubes and booster
 * leave; the element is stepped in plug flow with J = A·TCF(Δp − Δπ) and Cp = B·STCF·Cm/(J + B·STCF)
 * Source: solution–diffusion, e.g. Williams, A Review of Reverse Osmosis Theory; sodium chloride osmotic pressure by Pitzer.
 * Range: 0 to 45 °C, feed to 50 000 mg/L, gauge pressures to 2000 kPa.
 * Error: 0.05 % against an independent integration at 20 segments; real elements scatter ±15 %.
 * @example
 * ```ts
 * import { operatingPoint, simpleUnit } from "@tapside/reverse-osmosis";
 * const unit = simpleUnit({ areaM2: 1.28, waterLPerM2HBar: 4.64, saltLPerM2H: 0.746 }, { ratedLPerH: 74.7, ratedKPa: 414 });
 * const at = { feedPressureKPaGauge: 433, temperatureC: 19.7, feedMgPerL: 1674, tankPressureKPaGauge: 128 };
 * operatingPoint(unit, at).permeateLPerH; // => 8.92
 * ```
 */
export function operatingPoint(
  unit: Unit,
  conditions: Conditions,
  options: OperatingOptions = {},
): OperatingPoint {
  const range = outOfRange(conditions);
  if (range) return range;
  if (unit.elements.length === 0) return refused("no-element");
  const side = feedSide(unit, conditions);
  const deadHeadKPa = side.elementKPa(0);
  const backKPa = unit.storage === "vented" ? 0 : conditions.tankPressureKPaGauge;
  if (!(deadHeadKPa > 0)) return idle(unit, conditions, "no-flow");
  if (backKPa >= deadHeadKPa) return idle(unit, conditions, "tank-above-feed");
  return settle(unit, conditions, { side, deadHeadKPa, backKPa, segments: options.segments ?? 20 });
}

interface Settling {
  readonly side: ReturnType<typeof feedSide>;
  readonly deadHeadKPa: number;
  readonly backKPa: number;
  readonly segments: number;
}

function settle(unit: Unit, conditions: Conditions, settling: Settling): OperatingPoint {
  const { side, deadHeadKPa, backKPa, segments } = settling;
  const elements = elementsFlow(unit, conditions, segments);
  let end: ElementsEnd = { permeateLPerH: 0, permeateSaltMgPerH: 0, concentrateKPa: 0 };
  const excess = (feedLPerH: number) => {
    const pressure = side.elementKPa(feedLPerH);
    end = elements(feedLPerH, pressure, backKPa);
    const drain = restrictorLPerH(unit.restrictor, end.concentrateKPa, conditions.temperatureC);
    return end.permeateLPerH + drain - feedLPerH;
  };
  const openDrainLPerH = restrictorLPerH(unit.restrictor, deadHeadKPa, conditions.temperatureC);
  const most = elements.ceilingLPerH(deadHeadKPa, backKPa) + openDrainLPerH;
  const root = fallingRoot(
    excess,
    { low: 0, high: most, guess: 0.1 * openDrainLPerH + 0.9 * most },
    { x: most * 1e-14, f: most * 1e-10 },
  );
  if (root.kind !== "root") return refused("no-root", { mostLPerH: most });
  if (!(end.permeateLPerH > most * 1e-9))
    return idle(unit, conditions, backKPa > 0 ? "tank-above-feed" : "no-flow");
  const feedSalt = root.x * conditions.feedMgPerL;
  const permeateMgPerL = end.permeateSaltMgPerH / end.permeateLPerH;
  return {
    kind: "flowing",
    elementPressureKPaGauge: side.elementKPa(root.x),
    concentratePressureKPaGauge: end.concentrateKPa,
    feedLPerH: root.x,
    feedMgPerL: conditions.feedMgPerL,
    permeateLPerH: end.permeateLPerH,
    permeateMgPerL,
    concentrateLPerH: root.x - end.permeateLPerH,
    concentrateMgPerL: (feedSalt - end.permeateSaltMgPerH) / (root.x - end.permeateLPerH),
    recovery: end.permeateLPerH / root.x,
    rejection: conditions.feedMgPerL > 0 ? 1 - permeateMgPerL / conditions.feedMgPerL : 1,
  };
}
