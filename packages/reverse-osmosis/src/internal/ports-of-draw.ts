import { known, type Outcome, refused } from "@tapside/quantities";
import { boosterRiseKPa } from "../booster-rise.ts";
import type { ExpectedPort, Scatter, Today } from "../expected-readings.ts";
import { type FlowingPoint, type OperatingOptions, operatingPoint } from "../operating-point.ts";
import { standingPressureKPaGauge } from "../standing-pressure.ts";
import type { Conditions, Unit } from "../unit.ts";
import { fillingSpan } from "./filling-span.ts";
import { fewGaussNodes, gaussNodes } from "./gauss-legendre.ts";
import { tanksPressureKPaGauge } from "./tanks.ts";
import { type Draw, variedUnit } from "./varied-unit.ts";

export type PortValues = Partial<Readonly<Record<ExpectedPort, number>>>;
type Given = Omit<Conditions, "tankPressureKPaGauge">;

/**
 * How finely a port is worked out: steps along the element, and what may be left over. The middle to 0.01 %, its tank's mix too with
 * half the steps; the spread about it, itself known to a tenth, with few.
 */
interface Fineness extends OperatingOptions {
  readonly withinKPa: number;
  readonly nodes: typeof gaussNodes;
}
const OPEN: OperatingOptions = { segments: 20 };
const MIDDLE: Fineness = { segments: 10, leftOver: 1e-7, withinKPa: 1e-4, nodes: gaussNodes };
const SPREAD: Fineness = { segments: 5, leftOver: 1e-7, withinKPa: 1e-3, nodes: fewGaussNodes };

/** What of the unit a draw moves: the ratio and the air charge matter only once a tank fills. */
export interface Moves {
  readonly open: boolean;
  readonly tank: boolean;
}

const drawnConditions = ({ feedPressureKPaGauge: p, temperatureC: t, feedMgPerL: c }: Today, draw: Draw) => ({
  feedPressureKPaGauge: p.value + draw.pressure * p.u,
  temperatureC: t.value + draw.temperature * t.u,
  feedMgPerL: c.value * Math.exp((draw.solids * c.u) / c.value),
});

/** Every port of the unit as it is thought to be; tank ports are left out when there is no tank or it cannot fill. */
export function middlePorts(unit: Unit, today: Today): Outcome<PortValues> {
  const { feedPressureKPaGauge: p, temperatureC: t, feedMgPerL: c } = today;
  const given = { feedPressureKPaGauge: p.value, temperatureC: t.value, feedMgPerL: c.value };
  const open = openPorts(unit, given, OPEN);
  if (open.kind !== "known") return open;
  const filled = filledPorts(unit, given, today, open.value, MIDDLE);
  return known({ ...open.value, ...(shutsOff(unit, given, filled) && filled) });
}

/** Flows still when the valve closes; against a standing pressure higher than the flowing one it may never. */
const shutsOff = (unit: Unit, given: Given, { tankFull }: PortValues): boolean =>
  tankFull === undefined ||
  operatingPoint(unit, { ...given, tankPressureKPaGauge: tankFull }, MIDDLE).kind === "flowing";

/** The ports a draw moves, coarsely: good for how far they move, not for where they are; `still` are the same with nothing moved. */
export function portsOfDraw(
  unit: Unit,
  today: Today,
  scatter: Scatter,
  draw: Draw,
  moves: Moves,
  still: PortValues = {},
): PortValues {
  const varied = variedUnit(unit, scatter, draw);
  const given = drawnConditions(today, draw);
  const open = moves.open ? openPorts(varied, given, { ...SPREAD, nearFeedLPerH: feedOf(still) }) : known({});
  if (open.kind !== "known") return {};
  const near = { ...still, ...open.value };
  return moves.tank ? { ...open.value, ...filledPorts(varied, given, today, near, SPREAD) } : open.value;
}

const feedOf = ({ drain, permeate }: PortValues) =>
  drain === undefined || permeate === undefined ? undefined : drain + permeate;

function openPorts(unit: Unit, given: Given, fineness: OperatingOptions): Outcome<PortValues> {
  const open = operatingPoint(unit, { ...given, tankPressureKPaGauge: 0 }, fineness);
  if (open.kind === "refused") return open;
  if (open.kind !== "flowing") return refused(open.kind);
  return known({
    afterFilter: beforePumpKPa(unit, given, open),
    drain: open.concentrateLPerH,
    permeate: open.permeateLPerH,
    permeateToWaste: open.permeateMgPerL,
  });
}

/** The filters' gauge stands before the booster. */
const beforePumpKPa = (unit: Unit, given: Given, open: FlowingPoint): number =>
  unit.booster
    ? open.afterFilterKPaGauge - boosterRiseKPa(unit.booster, given.feedPressureKPaGauge, open.feedLPerH)
    : open.afterFilterKPaGauge;

const standing = (unit: Unit, given: Given, { staticFeedKPaGauge: feed }: Today) =>
  feed === undefined ? {} : { staticFeedKPaGauge: standingPressureKPaGauge(unit, given, feed) };

const tankPorts = (unit: Unit, meanMgPerL: number, shutOffKPaGauge: number): PortValues => ({
  delivered: meanMgPerL + (unit.addedMgPerL ?? 0),
  ...(unit.storage !== "vented" && { tankFull: shutOffKPaGauge }),
});

function filledPorts(
  unit: Unit,
  given: Given,
  today: Today,
  open: PortValues,
  fineness: Fineness,
): PortValues {
  let nearFeedLPerH = feedOf(open);
  const span = fillingSpan(unit, given, { ...fineness, nearFeedLPerH, ...standing(unit, given, today) });
  if (span.kind !== "known") return {};
  // A vented tank takes the open flow's water from first to last.
  const blend = unit.blendFraction ?? 0;
  if (unit.storage === "vented" && open.permeateToWaste !== undefined)
    return tankPorts(unit, (1 - blend) * open.permeateToWaste + blend * given.feedMgPerL, 0);
  const { fromL, toL, toKPaGauge } = span.value;
  let mean = 0;
  for (const [position, weight] of fineness.nodes) {
    const tankPressureKPaGauge = tanksPressureKPaGauge(unit, fromL + position * (toL - fromL));
    const point = operatingPoint(unit, { ...given, tankPressureKPaGauge }, { ...fineness, nearFeedLPerH });
    if (point.kind !== "flowing") return {};
    nearFeedLPerH = point.feedLPerH;
    mean += weight * point.productMgPerL;
  }
  return tankPorts(unit, mean, toKPaGauge);
}
