import {
  cartridgeDropKPa,
  deliveredLPerH,
  type FlowingPoint,
  filling,
  fullTank,
  type OperatingPoint,
  operatingPoint,
  usableLitres,
} from "@tapside/reverse-osmosis";
import type { Hidden } from "./hidden.ts";
import { fullTankKPaGauge, gasAtLitres } from "./internal/tank-at-rest.ts";
import type { SignId } from "./signs.ts";

export type Values = Record<SignId, number>;

/** Steps along the element: 3 are good to 0.3 %, a tenth of a reading's scatter, and seven times as fast as 20. */
const SEGMENTS = 3;
/** A tap runs weak below this. */
const WEAK_TAP_KPA = 35;

const flowing = (point: OperatingPoint): FlowingPoint | undefined =>
  point.kind === "flowing" ? point : undefined;

function openAt(hidden: Hidden, share: number): OperatingPoint {
  const { unit, conditions } = hidden.situation;
  const feedPressureKPaGauge = conditions.feedPressureKPaGauge * share;
  return operatingPoint(
    unit,
    { ...conditions, feedPressureKPaGauge, tankPressureKPaGauge: 0 },
    { segments: SEGMENTS },
  );
}

/** Drain flow with the drain line taken off. */
function lineOffFlow(hidden: Hidden, drainLPerH: number): number {
  const { situation } = hidden;
  const { drainLineShare, ...unit } = situation.unit;
  if (drainLineShare === undefined) return drainLPerH;
  const point = openAt({ ...hidden, situation: { ...situation, unit } }, 1);
  return point.kind === "refused" ? 0 : point.concentrateLPerH;
}

/** What the tank and everything behind it show. */
function behindTheElement(hidden: Hidden, open: FlowingPoint | undefined) {
  const { unit, conditions } = hidden.situation;
  const fullKPa = fullTankKPaGauge(hidden);
  const { blendFraction: _, ...unblended } = unit;
  const filled = filling(unblended, conditions, {
    segments: SEGMENTS,
    staticFeedKPaGauge: fullKPa / unit.shutOff.ratio,
  });
  const mean = filled.kind === "known" ? filled.value.meanMgPerL : (open?.permeateMgPerL ?? 0);
  // A leaking check valve refills near the full tank again and again: half of what is drawn was made there.
  const product = unit.backLeakLPerHBar
    ? 0.5 * (mean + (filled.kind === "known" ? filled.value.atShutOff.permeateMgPerL : mean))
    : mean;
  const [tank] = unit.tanks;
  const atTap = deliveredLPerH(unit, fullKPa, conditions.temperatureC);
  const fillingLPerH = open ? 0.7 * open.permeateLPerH : 0;
  return {
    fullKPa,
    product,
    gasL: tank ? gasAtLitres(unit, fullKPa) : 0.3,
    drawOffL: tank
      ? usableLitres(tank, { fullKPaGauge: fullKPa, minimumKPaGauge: WEAK_TAP_KPA }, unit.atmosphericKPa)
      : 0,
    outletLPerH: Math.min(tank ? Number.POSITIVE_INFINITY : fillingLPerH, atTap),
  };
}

/** What every sign would show with perfect instruments of this unit: one run of the forward model. */
export function trueValues(hidden: Hidden): Values {
  const { unit, conditions } = hidden.situation;
  const waste = openAt(hidden, 1);
  const open = flowing(waste);
  const throttled = flowing(openAt(hidden, 0.5));
  const behind = behindTheElement(hidden, open);
  const drain = waste.kind === "refused" ? 0 : waste.concentrateLPerH;
  const atRest = fullTank(unit, { ...conditions, tankPressureKPaGauge: behind.fullKPa });
  const { tdsGain: gain, gaugeGain } = hidden;
  const feed = conditions.feedMgPerL;
  const blend = unit.blendFraction ?? 0;
  const mixed = (share: number) => (1 - share) * behind.product + share * feed + (unit.addedMgPerL ?? 0);
  const elementKPa = waste.kind === "refused" ? 0 : waste.afterFilterKPaGauge;
  const afterFilter = afterFilterOf(hidden, waste);
  const delivered = mixed(blend);
  return {
    staticPressure: hidden.staticPressureKPaGauge * gaugeGain,
    beforeFilterPressure: conditions.feedPressureKPaGauge * gaugeGain,
    afterFilterPressure: afterFilter * gaugeGain,
    elementPressure: elementKPa * gaugeGain,
    temperature: conditions.temperatureC,
    feedTds: feed * gain,
    permeateTds: gain * (open?.permeateMgPerL ?? feed),
    permeateFlow: open?.permeateLPerH ?? 0,
    drainFlow: drain,
    throttledFlow: throttled?.permeateLPerH ?? 0,
    throttledTds: gain * (throttled?.permeateMgPerL ?? feed),
    tankFullPressure: behind.fullKPa * gaugeGain,
    drainTankFullFlow: atRest.drainLPerH,
    drainFeedClosedFlow: atRest.drainFeedClosedLPerH,
    gasL: behind.gasL,
    drawOffL: behind.drawOffL,
    outletFlow: behind.outletLPerH,
    firstDrawTds: gain * delivered * hidden.firstDrawFactor,
    deliveredTds: gain * delivered,
    flushedTds: gain * delivered,
    isolatedTds: gain * mixed(0),
    chlorineBefore: hidden.chlorineMgPerL,
    chlorineAfter: hidden.chlorineMgPerL * hidden.carbonPass,
    hardness: hidden.hardnessMgPerL,
    tdsStandard: gain,
    gaugeCheck: gaugeGain,
    airCharge: unit.tanks[0]?.airChargeKPaGauge ?? 0,
    drainLineOffFlow: lineOffFlow(hidden, drain),
    dailyLitres: hidden.dailyLitres,
    tankValveShut: Number(hidden.tankValveShut),
    tubingSwapped: Number(unit.linesReversed ?? false),
    lineKinked: Number(hidden.lineKinked),
    waterAtAirValve: Number(hidden.diaphragmRuptured),
    meterScaleWrong: Number(hidden.meterScaleWrong),
    scaleSeen: Number(hidden.scaleSeen),
    foulingSeen: Number(hidden.foulingSeen),
    brineSealBad: Number(hidden.brineSealBad),
    oRingBad: Number(hidden.oRingBad),
  };
}

/** Between filters and booster; without a booster the model's own gauge. */
function afterFilterOf(hidden: Hidden, waste: OperatingPoint): number {
  const { unit, conditions } = hidden.situation;
  if (waste.kind === "refused") return 0;
  if (!unit.booster) return waste.afterFilterKPaGauge;
  const lost = unit.cartridges.reduce((sum, one) => sum + cartridgeDropKPa(one, waste.feedLPerH), 0);
  return Math.max(0, conditions.feedPressureKPaGauge - lost);
}
