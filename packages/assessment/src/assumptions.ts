import type { UnitFile } from "@tapside/records";
import {
  type Booster,
  LINES,
  lineAsFound,
  restrictorAsFound,
  restrictorMeasures,
  usualPermeatePump,
  usualPermeatePumpScatter,
  usualScatter,
} from "@tapside/reverse-osmosis";
import type { Assumption, Context } from "./assessment.ts";
import { CHARGE_WANDERS_KPA, UNREAD_CHARGE_U_KPA, USUAL_CHARGE_KPA } from "./charge-today.ts";
import { FEED_WANDERS_RELATIVE, KNOWN_ELEMENT, STANDING_ABOVE } from "./expected.ts";
import { fillingRelative } from "./filling-hours.ts";
import {
  BOOSTER_RELATIVE,
  blendFractionOf,
  boosterOf,
  CLEAN_FILTER,
  drainsOf,
  nameplateAsReadings,
  RATING_RELATIVE,
} from "./from-records.ts";
import { CUP_RELATIVE, STOPWATCH_S } from "./internal/amounts.ts";
import { BEYOND_LAMINAR_RELATIVE, isBeyondLaminar, RESTRICTOR_RELATIVE } from "./restrictor-from.ts";
import { hasPermeatePump, shutOffRatioOf, shutOffRatioU } from "./shut-off-ratio.ts";
import { TANK_VOLUME_RELATIVE } from "./tank-figures.ts";

const percent = (id: string, share: number): Assumption => ({
  id,
  value: Math.round(1000 * share) / 10,
  unit: "%",
  origin: "house",
});

const boosterLines = (booster: Booster): readonly Assumption[] => [
  { id: "boosterRise", value: booster.shutOffRiseKPa, unit: "kPa", origin: "unit" },
  { id: "boosterOpenFlow", value: booster.openFlowLPerH, unit: "L/h", origin: "unit" },
  ...(booster.offBelowKPaGauge === undefined
    ? []
    : [{ id: "boosterOffBelow", value: booster.offBelowKPaGauge, unit: "kPa", origin: "unit" } as const]),
  percent("boosterCurve", BOOSTER_RELATIVE),
];

const permeatePumpLines = (): readonly Assumption[] => [
  { id: "pumpStrokeRatio", value: usualPermeatePump.strokeRatio, unit: "", origin: "house" },
  percent("pumpStrokeRatioU", usualPermeatePumpScatter.strokeRatioRelative),
  { id: "pumpInlet", value: usualPermeatePump.inletKPa, unit: "kPa", origin: "house" },
  { id: "pumpInletU", value: usualPermeatePumpScatter.inletKPa, unit: "kPa", origin: "house" },
  { id: "pumpLoss", value: usualPermeatePump.lossKPa, unit: "kPa", origin: "house" },
  { id: "pumpSlip", value: usualPermeatePump.slip, unit: "", origin: "house" },
];

const blendLines = (share: number): readonly Assumption[] => [
  { id: "blendShare", value: 100 * share, unit: "%", origin: "unit" },
  percent("blendWanders", usualScatter.blendRelative),
];

/** The drain that stands in for a restrictor nobody named: of one element by the label's recovery or the usual one, of two side by side twice. */
function drainLine(file: UnitFile): readonly Assumption[] {
  if (restrictorAsFound(file.unit).kind === "known") return [];
  const { ratedRejectLPerH, twoElements } = file.unit;
  const plate = nameplateAsReadings(file);
  if (plate.kind !== "known" || (ratedRejectLPerH! > 0 && drainsOf(file.unit) === 1)) return [];
  const value = (plate.value.drainLPerH!.value * drainsOf(file.unit)) / (twoElements ? 2 : 1);
  return [{ id: "usualDrain", value, unit: "L/h", origin: "house" }];
}

const MEASURE_UNITS = {
  restrictorLPerH: "L/h",
  restrictorAtKPaGauge: "kPa",
  restrictorAtC: "°C",
  restrictorBoreMm: "mm",
  restrictorLengthM: "m",
} as const;

/** A restrictor whose kind was found: what it is known by. */
function restrictorLines(file: UnitFile): readonly Assumption[] {
  const { unit } = file;
  if (unit.restrictorKind === undefined || restrictorAsFound(unit).kind !== "known") return [];
  const by = restrictorMeasures(unit).map(
    (id): Assumption => ({ id, value: unit[id]!, unit: MEASURE_UNITS[id], origin: "unit" }),
  );
  return isBeyondLaminar(file) ? [...by, percent("beyondLaminar", 2 * BEYOND_LAMINAR_RELATIVE)] : by;
}

/** Lines that count, with the bore they have or usually have. */
const lineLines = ({ unit }: UnitFile): readonly Assumption[] =>
  LINES.flatMap((line): readonly Assumption[] => {
    const tube = lineAsFound(line, unit);
    if (tube.kind !== "known") return [];
    const bore = unit[`${line}TubeBoreMm`] === undefined ? "house" : "unit";
    return [
      { id: `${line}TubeLength`, value: tube.value.lengthM, unit: "m", origin: "unit" },
      { id: `${line}TubeBore`, value: tube.value.boreMm, unit: "mm", origin: bore },
    ];
  });

/** Everything the judgement takes for granted where nothing was read, with where each number comes from. */
export function assumptionsOf(file: UnitFile, context: Context): readonly Assumption[] {
  const set = context.settings;
  const booster = boosterOf(file.unit);
  const blend = blendFractionOf(file.unit);
  const pumped = hasPermeatePump(file);
  const ratio = file.unit.shutOffRatio ? "unit" : set.shutOffRatio && !pumped ? "settings" : "house";
  return [
    { id: "shutOffRatio", value: shutOffRatioOf(file, context), unit: "", origin: ratio },
    ...(pumped
      ? [{ id: "shutOffRatioU", value: shutOffRatioU(file), unit: "", origin: ratio } as const]
      : []),
    ...(booster ? boosterLines(booster) : []),
    ...(pumped ? permeatePumpLines() : []),
    ...(blend === undefined ? [] : blendLines(blend)),
    ...drainLine(file),
    ...restrictorLines(file),
    ...lineLines(file),
    { id: "cleanFilterDrop", value: CLEAN_FILTER.dropKPa, unit: "kPa", origin: "house" },
    percent("cleanFilterDropU", CLEAN_FILTER.uRelative),
    { id: "usualCharge", value: USUAL_CHARGE_KPA, unit: "kPa", origin: "house" },
    { id: "unreadChargeU", value: UNREAD_CHARGE_U_KPA, unit: "kPa", origin: "house" },
    { id: "chargeWanders", value: CHARGE_WANDERS_KPA, unit: "kPa", origin: "house" },
    percent("standingAbove", STANDING_ABOVE.relative),
    percent("standingAboveU", STANDING_ABOVE.uRelative),
    percent("nameplateFlow", RATING_RELATIVE.flow),
    percent("nameplateSalt", RATING_RELATIVE.salt),
    percent("knownFlow", KNOWN_ELEMENT.waterRelative),
    percent("knownSalt", KNOWN_ELEMENT.saltRelative),
    percent(
      "restrictor",
      RESTRICTOR_RELATIVE[file.unit.restrictorKind ?? "rated"] ?? RESTRICTOR_RELATIVE.rated,
    ),
    percent("feedWanders", FEED_WANDERS_RELATIVE),
    percent("filling", fillingRelative(file)),
    percent("tankVolume", TANK_VOLUME_RELATIVE),
    percent("cup", CUP_RELATIVE),
    { id: "stopwatch", value: STOPWATCH_S, unit: "s", origin: "house" },
    percent("flowReading", usualScatter.flowReadingRelative),
    percent("solidsReading", usualScatter.solidsReadingRelative),
    { id: "gauge", value: usualScatter.gaugeKPa, unit: "kPa", origin: "house" },
  ];
}
