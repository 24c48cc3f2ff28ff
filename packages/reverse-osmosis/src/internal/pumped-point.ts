import type { FlowingPoint, OperatingPoint } from "../operating-point.ts";
import type { Unit } from "../unit.ts";
import { fallingRoot } from "./bracketed-root.ts";
import { drainSide } from "./drain-side.ts";
import { lifts, type Strokes, strokesOf } from "./strokes.ts";

/**
 * What the permeate pump does: "lifting" keeps the element's permeate side at its inlet pressure; "overrun" gets too little concentrate for
 * that, and the permeate rises until it keeps up; "through" the permeate runs straight into the tank; "stalled" it cannot lift to the tank.
 */
export interface PumpAtWork {
  readonly state: "lifting" | "overrun" | "through" | "stalled";
  /** Where it lifts to: the tank and what the tubes to it take. */
  readonly liftKPa: number;
  /** Taken from the concentrate while it pushes. */
  readonly driveKPa: number;
  /** Concentrate that pushes, of all that runs to the drain. */
  readonly drivingLPerH: number;
  /** Permeate that is lifted; the rest runs straight through. */
  readonly liftedLPerH: number;
}

/** Nothing is said of the pump where nothing flows. */
const withPump = (point: OperatingPoint, permeatePump: PumpAtWork): OperatingPoint =>
  point.kind === "flowing" ? { ...point, permeatePump } : point;

interface Between {
  /** The unit with its permeate side at a pressure; without strokes as if there were no pump. */
  readonly at: (permeateKPa: number, strokes?: Strokes) => OperatingPoint;
  /** Where the permeate has to go. */
  readonly backKPa: number;
  readonly deadHeadKPa: number;
}

/** The unit with its permeate on the way to `backKPa`: straight, or by a permeate pump that lifts it there. */
export function pumpedPoint(unit: Unit, temperatureC: number, between: Between): OperatingPoint {
  const { permeatePump: pump } = unit;
  const { at, backKPa, deadHeadKPa } = between;
  const standing = (state: "through" | "stalled") =>
    withPump(at(backKPa), { state, liftKPa: backKPa, driveKPa: 0, drivingLPerH: 0, liftedLPerH: 0 });
  if (!pump) return at(backKPa);
  if (!lifts(unit)) return standing("stalled");
  if (backKPa <= pump.inletKPa) return standing("through");
  const strokes = strokesOf(pump, drainSide(unit, temperatureC), backKPa);
  if (!(deadHeadKPa > strokes.driveKPa)) return standing("stalled");
  return lowestPermeate(strokes, between, pump.inletKPa) ?? standing("stalled");
}

/** At the lowest permeate pressure at which the pump lifts all that the element makes, from its inlet's to the tank's. */
function lowestPermeate(
  strokes: Strokes,
  { at, backKPa, deadHeadKPa }: Between,
  inletKPa: number,
): OperatingPoint | undefined {
  const couldLift = (point: FlowingPoint) =>
    strokes.pushingLPerH(point.concentratePressureKPaGauge) / strokes.litresPerLitre;
  const behind = (point: OperatingPoint) =>
    point.kind === "flowing" ? point.permeateLPerH - couldLift(point) : Number.NEGATIVE_INFINITY;
  const atWork = (point: OperatingPoint, state: PumpAtWork["state"]) => {
    if (point.kind !== "flowing") return point;
    const liftedLPerH = Math.min(point.permeateLPerH, couldLift(point));
    const drivingLPerH = strokes.litresPerLitre * liftedLPerH;
    const { driveKPa } = strokes;
    return withPump(point, { state, liftKPa: backKPa, driveKPa, drivingLPerH, liftedLPerH });
  };
  const highKPa = Math.min(backKPa, deadHeadKPa);
  const lowKPa = Math.min(inletKPa, highKPa);
  const low = at(lowKPa, strokes);
  if (!(behind(low) > 0)) return atWork(low, "lifting");
  const high = at(highKPa, strokes);
  if (behind(high) > 0)
    return high.kind === "flowing" && couldLift(high) > 0 ? atWork(high, "through") : undefined;
  let point = low;
  const excess = (permeateKPa: number) => {
    point = at(permeateKPa, strokes);
    return behind(point);
  };
  const most = low.kind === "flowing" ? low.permeateLPerH : 0;
  const bracket = { low: lowKPa, high: highKPa, guess: (lowKPa + highKPa) / 2 };
  fallingRoot(excess, bracket, { x: 1e-10 * highKPa, f: 1e-10 * most });
  return atWork(point, "overrun");
}
