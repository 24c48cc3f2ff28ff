import { known, type Outcome, refused } from "@tapside/quantities";
import { boosterRiseKPa } from "../booster-rise.ts";
import type { ExpectedPort, Scatter, Today } from "../expected-readings.ts";
import { filling } from "../filling.ts";
import { type FlowingPoint, operatingPoint } from "../operating-point.ts";
import { standingPressureKPaGauge } from "../standing-pressure.ts";
import type { Conditions, Unit } from "../unit.ts";
import { fillingSpan } from "./filling-span.ts";
import { fewGaussNodes } from "./gauss-legendre.ts";
import { tanksPressureKPaGauge } from "./tanks.ts";
import { type Draw, variedUnit } from "./varied-unit.ts";

export type PortValues = Partial<Readonly<Record<ExpectedPort, number>>>;
type Given = Omit<Conditions, "tankPressureKPaGauge">;

/** Steps along the element: the middle to 0.01 %, the spread about it, itself known to a tenth, with fewer. */
const SEGMENTS = { middle: 20, spread: 6 } as const;

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
  const open = openPorts(unit, given, SEGMENTS.middle);
  if (open.kind !== "known") return open;
  const filled = filling(unit, given, standing(unit, given, today));
  if (filled.kind !== "known") return open;
  const { meanMgPerL, shutOffKPaGauge } = filled.value;
  return known({ ...open.value, ...tankPorts(unit, meanMgPerL, shutOffKPaGauge) });
}

/** The ports a draw moves, coarsely: good for how far they move, not for where they are. */
export function portsOfDraw(
  unit: Unit,
  today: Today,
  scatter: Scatter,
  draw: Draw,
  moves: Moves,
): PortValues {
  const varied = variedUnit(unit, scatter, draw);
  const given = drawnConditions(today, draw);
  const open = moves.open ? openPorts(varied, given, SEGMENTS.spread) : known({});
  if (open.kind !== "known") return {};
  return moves.tank ? { ...open.value, ...filledPorts(varied, given, today, open.value) } : open.value;
}

function openPorts(unit: Unit, given: Given, segments: number): Outcome<PortValues> {
  const open = operatingPoint(unit, { ...given, tankPressureKPaGauge: 0 }, { segments });
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

function filledPorts(unit: Unit, given: Given, today: Today, open: PortValues): PortValues {
  // A vented tank takes the open flow's water from first to last.
  const blend = unit.blendFraction ?? 0;
  if (unit.storage === "vented" && open.permeateToWaste !== undefined)
    return tankPorts(unit, (1 - blend) * open.permeateToWaste + blend * given.feedMgPerL, 0);
  const options = { segments: SEGMENTS.spread, withinKPa: 1e-3 };
  const span = fillingSpan(unit, given, {
    ...options,
    ...standing(unit, given, today),
  });
  if (span.kind !== "known") return {};
  const { fromL, toL, toKPaGauge } = span.value;
  let mean = 0;
  for (const [position, weight] of fewGaussNodes) {
    const tankPressureKPaGauge = tanksPressureKPaGauge(unit, fromL + position * (toL - fromL));
    const point = operatingPoint(unit, { ...given, tankPressureKPaGauge }, options);
    if (point.kind !== "flowing") return {};
    mean += weight * point.productMgPerL;
  }
  return tankPorts(unit, mean, toKPaGauge);
}
