import { known, type Outcome } from "@tapside/quantities";
import { deliveredLPerH } from "./delivered-flow.ts";
import { filling } from "./filling.ts";
import { fullTank } from "./full-tank.ts";
import { type OperatingPoint, operatingPoint } from "./operating-point.ts";
import type { Situation } from "./situation.ts";
import { usableLitres } from "./tank.ts";
import { tankFullKPaGauge } from "./tank-full.ts";

/** What can be read at the unit's ports. Pressures kPa gauge, flows L/h, dissolved solids mg/L as sodium chloride. */
export type PortId =
  | "feedPressureKPaGauge"
  | "afterFilterKPaGauge"
  | "temperatureC"
  | "feedMgPerL"
  | "permeateLPerH"
  | "permeateMgPerL"
  | "firstWaterMgPerL"
  | "drainLPerH"
  | "drainLineOffLPerH"
  | "drainTankFullLPerH"
  | "drainFeedClosedLPerH"
  | "tankFullKPaGauge"
  | "tankFallKPaPerH"
  | "airChargeKPaGauge"
  | "fillHours"
  | "drawOffL"
  | "tankMgPerL"
  | "deliveredMgPerL"
  | "deliveredLPerH"
  | "waterAtAirValve"
  | "chlorineAfterCarbonMgPerL"
  | "hardnessAtElementMgPerLCaCO3"
  | "usedOverMade";

/** Ports that are not there, or that nothing can be read at, are left out. */
export type PortReadings = Readonly<Partial<Record<PortId, number>>>;

/** An appliance runs weak below this. Source: common practice, no source. */
const weakKPa = 35;

/**
 * Everything that can be read at a unit in a situation, without the scatter of the meters: what the parts, faults included, make of the
 * water.
 *
 * Formula: `operatingPoint` with the permeate to waste, `filling`, `tankFullKPaGauge`, `fullTank`, `deliveredLPerH`; meter factors last
 * Source: those models.
 * Range: as `operatingPoint`.
 * Error: as theirs; the draw-off is from full down to 35 kPa.
 * @example
 * ```ts
 * import { simpleUnit, unitReadings } from "@tapside/reverse-osmosis";
 * const element = { areaM2: 1.5, waterLPerM2HBar: 4.2, saltLPerM2H: 0.65, polarisation: 1.1 };
 * const unit = simpleUnit(element, { ratedLPerH: 45, ratedKPa: 414 }, { volumeL: 53, airChargeKPaGauge: 50 });
 * const conditions = { feedPressureKPaGauge: 420, temperatureC: 15, feedMgPerL: 300, tankPressureKPaGauge: 0 };
 * const read = unitReadings({ unit, conditions });
 * read.kind === "known" ? [read.value.permeateLPerH, read.value.drainTankFullLPerH] : []; // => [18, 0]
 * ```
 */
export function unitReadings(
  situation: Situation,
  options: { readonly segments?: number } = {},
): Outcome<PortReadings> {
  const { unit, conditions } = situation;
  const open = operatingPoint(unit, { ...conditions, tankPressureKPaGauge: 0 }, options);
  if (open.kind === "refused") return open;
  return known(
    asRead(situation, {
      feedPressureKPaGauge: conditions.feedPressureKPaGauge,
      temperatureC: conditions.temperatureC,
      feedMgPerL: conditions.feedMgPerL,
      ...elementPorts(situation, open),
      drainLineOffLPerH: lineOff(situation, options),
      ...tankPorts(situation, open, options),
      ...waterPorts(situation),
    }),
  );
}

function elementPorts(
  situation: Situation,
  open: Exclude<OperatingPoint, { kind: "refused" }>,
): PortReadings {
  const { afterFilterKPaGauge, concentrateLPerH: drainLPerH } = open;
  if (open.kind !== "flowing") return { afterFilterKPaGauge, drainLPerH, permeateLPerH: 0 };
  const { permeateLPerH, permeateMgPerL } = open;
  const firstWaterMgPerL = permeateMgPerL * (situation.firstWaterFactor ?? 1);
  return { afterFilterKPaGauge, drainLPerH, permeateLPerH, permeateMgPerL, firstWaterMgPerL };
}

function lineOff({ unit, conditions }: Situation, options: { readonly segments?: number }): number {
  const { drainLineShare: _, drainTubes: __, ...off } = unit;
  const point = operatingPoint(off, { ...conditions, tankPressureKPaGauge: 0 }, options);
  return point.kind === "refused" ? 0 : point.concentrateLPerH;
}

function tankPorts(
  situation: Situation,
  open: OperatingPoint,
  options: { readonly segments?: number },
): PortReadings {
  const { unit, conditions, staticFeedKPaGauge, usedLPerDay } = situation;
  const delivered = (kPa: number) => deliveredLPerH(unit, kPa, conditions.temperatureC);
  if (unit.tanks.length === 0) return straightToTap(situation, open);
  const full = tankFullKPaGauge(unit, conditions, { ...options, staticFeedKPaGauge });
  const fullKPa = full.kind === "known" ? full.value : 0;
  const closing = { ...unit, shutOff: { ...unit.shutOff, stuckOpen: false } };
  const still = unit.shutOff.stuckOpen ? { staticFeedKPaGauge: fullKPa / unit.shutOff.ratio } : undefined;
  const filled = filling(closing, conditions, {
    ...options,
    ...(still ?? (staticFeedKPaGauge !== undefined && { staticFeedKPaGauge })),
  });
  const atRest = fullTank(unit, { ...conditions, tankPressureKPaGauge: fullKPa });
  const swing = { fullKPaGauge: fullKPa, minimumKPaGauge: weakKPa };
  return {
    ...(unit.storage !== "vented" && {
      tankFullKPaGauge: fullKPa,
      airChargeKPaGauge: Math.min(...unit.tanks.map((tank) => tank.airChargeKPaGauge)),
      drawOffL: unit.tanks.reduce((sum, tank) => sum + usableLitres(tank, swing, unit.atmosphericKPa), 0),
      drainTankFullLPerH: atRest.drainLPerH,
      drainFeedClosedLPerH: atRest.drainFeedClosedLPerH,
      tankFallKPaPerH: atRest.tankFallKPaPerH,
      waterAtAirValve: Number(unit.tanks.some((tank) => tank.waterAtAirValve)),
    }),
    deliveredLPerH: delivered(fullKPa),
    ...(filled.kind === "known" && {
      fillHours: filled.value.hours,
      tankMgPerL: filled.value.meanMgPerL,
      deliveredMgPerL: filled.value.meanMgPerL + (unit.addedMgPerL ?? 0),
      ...(usedLPerDay !== undefined && {
        usedOverMade: (usedLPerDay * filled.value.hours) / (24 * filled.value.storedL),
      }),
    }),
  };
}

/** No tank, or its valve shut: what the element makes is all that comes. */
function straightToTap({ unit, conditions }: Situation, open: OperatingPoint): PortReadings {
  if (open.kind !== "flowing") return { drawOffL: 0, deliveredLPerH: 0 };
  const most = deliveredLPerH(unit, conditions.feedPressureKPaGauge, conditions.temperatureC);
  return {
    drawOffL: 0,
    deliveredLPerH: Math.min(open.productLPerH, most),
    deliveredMgPerL: open.productMgPerL + (unit.addedMgPerL ?? 0),
  };
}

function waterPorts({ unit, feedChlorineMgPerL, feedHardnessMgPerLCaCO3 }: Situation): PortReadings {
  return {
    ...(feedChlorineMgPerL !== undefined && {
      chlorineAfterCarbonMgPerL: feedChlorineMgPerL * (unit.carbonPasses ?? 1),
    }),
    ...(feedHardnessMgPerLCaCO3 !== undefined && {
      hardnessAtElementMgPerLCaCO3: feedHardnessMgPerLCaCO3 * (unit.softenerPasses ?? 1),
    }),
  };
}

const bySolidsMeter: readonly PortId[] = [
  "feedMgPerL",
  "permeateMgPerL",
  "firstWaterMgPerL",
  "tankMgPerL",
  "deliveredMgPerL",
];
const byGauge: readonly PortId[] = [
  "feedPressureKPaGauge",
  "afterFilterKPaGauge",
  "tankFullKPaGauge",
  "tankFallKPaPerH",
];

function asRead({ solidsGain = 1, gaugeGain = 1 }: Situation, values: PortReadings): PortReadings {
  const read: Partial<Record<PortId, number>> = { ...values };
  for (const id of bySolidsMeter) if (read[id] !== undefined) read[id] *= solidsGain;
  for (const id of byGauge) if (read[id] !== undefined) read[id] *= gaugeGain;
  return read;
}
