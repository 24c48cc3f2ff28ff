import type { ExpectedPort, Scatter, Today } from "../expected-readings.ts";
import type { Unit } from "../unit.ts";
import { type Moves, type PortValues, portsOfDraw } from "./ports-of-draw.ts";
import { type Draw, middleDraw } from "./varied-unit.ts";

/** Standard deviations from the middle to either end of an interval that holds 19 in 20. */
export const NINETEEN_IN_TWENTY = 1.96;
/** Ports behind the tank cost a filling for every draw: their slope is taken from one small step, in standard deviations. */
const SMALL = 0.1;

/** What one standard deviation does below and above: a clogged filter takes more pressure than a clean one saves. */
export interface PortSpread {
  readonly down: number;
  readonly up: number;
}

export const isPressure = (port: ExpectedPort) => port === "afterFilter" || port === "tankFull";

/** What each draw moves in this unit today; what moves nothing is not drawn. */
function movesOf(unit: Unit, today: Today, fills: boolean): Readonly<Record<keyof Draw, Moves>> {
  const all = { open: true, tank: fills };
  const none = { open: false, tank: false };
  const tankOnly = { open: false, tank: fills && unit.storage !== "vented" };
  return {
    water: all,
    salt: all,
    restrictor: all,
    filter: unit.cartridges.some((one) => one.dropKPa > 0) ? all : none,
    ratio: tankOnly,
    charge: tankOnly,
    stroke: unit.permeatePump ? tankOnly : none,
    inlet: unit.permeatePump ? tankOnly : none,
    blend: !unit.blendFraction ? none : unit.storage === "vented" ? all : tankOnly,
    pressure: today.feedPressureKPaGauge.u > 0 ? all : none,
    temperature: today.temperatureC.u > 0 ? all : none,
    solids: today.feedMgPerL.u > 0 ? all : none,
  };
}

type Changes = Partial<Readonly<Record<ExpectedPort, PortSpread>>>;

/** How far the ports move for each property by itself; kPa for pressures, in the logarithm for flows and dissolved solids. */
export function portChanges(unit: Unit, today: Today, scatter: Scatter, fills: boolean): Changes[] {
  const vented = unit.storage === "vented";
  const still = portsOfDraw(unit, today, scatter, middleDraw, { open: true, tank: fills });
  const moved = (name: keyof Draw, n: number, moves: Moves) =>
    movedBy(still, portsOfDraw(unit, today, scatter, { ...middleDraw, [name]: n }, moves, still), n);
  return (Object.entries(movesOf(unit, today, fills)) as [keyof Draw, Moves][]).flatMap(([name, moves]) => {
    const open = { open: true, tank: moves.tank && vented };
    const sides = [-NINETEEN_IN_TWENTY, NINETEEN_IN_TWENTY];
    return [
      ...(moves.open ? [bothSides(sides.map((n) => moved(name, n, open)))] : []),
      ...(moves.tank && !vented ? [oneSide(moved(name, SMALL, { open: false, tank: true }))] : []),
    ];
  });
}

type Moved = Partial<Readonly<Record<ExpectedPort, number>>>;

function movedBy(still: PortValues, moved: PortValues, n: number): Moved {
  const change = (port: ExpectedPort, was: number, is: number) =>
    (isPressure(port) ? is - was : Math.log(is / was)) / Math.abs(n);
  return Object.fromEntries(
    (Object.entries(moved) as [ExpectedPort, number][]).flatMap(([port, is]) => {
      const was = still[port];
      return was === undefined ? [] : [[port, change(port, was, is)]];
    }),
  );
}

function bothSides(moved: readonly Moved[]): Changes {
  const ports = new Set(moved.flatMap((one) => Object.keys(one) as ExpectedPort[]));
  const spread = (port: ExpectedPort): PortSpread => {
    const changes = moved.map((one) => one[port] ?? 0);
    return { down: -Math.min(0, ...changes), up: Math.max(0, ...changes) };
  };
  return Object.fromEntries([...ports].map((port) => [port, spread(port)]));
}

const oneSide = (moved: Moved): Changes =>
  Object.fromEntries(
    Object.entries(moved).map(([port, change]) => [port, { down: Math.abs(change), up: Math.abs(change) }]),
  );
