import { allKnown, known, missing, type Outcome, type Uncertain } from "@tapside/quantities";
import {
  bestCharge,
  type Conditions,
  feedInSeason,
  type Gain,
  type HelpQuestion,
  type RestrictorAnswer,
  restrictorForRecovery,
  type Season,
  type Unit,
  usualBooster,
  usualScatter,
  usualShutOffRatioWithPump,
  willItHelp,
} from "@tapside/reverse-osmosis";
import type { WaterAnalysis } from "@tapside/water";
import { all, mapReader, notNegative, optional, positive, type Reader } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { emptyTankOfRow, seasonsOfRow, unitOfRow } from "./unit-row.ts";
import { ionsIn } from "./water-input.ts";

const cellOf = <T>(outcome: Outcome<T>, of: (value: T) => number): number | string =>
  outcome.kind === "known" ? of(outcome.value) : "";

const gainColumns = (name: string, outcome: Outcome<Gain>): Record<string, string | number> => ({
  [name]: cellOf(outcome, ({ gain }) => gain.value),
  [`${name}_low`]: cellOf(outcome, ({ gain }) => gain.low),
  [`${name}_high`]: cellOf(outcome, ({ gain }) => gain.high),
  [`${name}_says`]: outcome.kind === "known" ? outcome.value.verdict : "cannotTell",
});

const withTail = (name: string) => [name, `${name}_low`, `${name}_high`, `${name}_says`];

const exact = (value: number): Uncertain => ({ value, u: 0 });

/** The feed as told, and what the appliance needs. */
const asked = (unit: Unit, at: Conditions, minimumKPaGauge: number) => ({
  scatter: { ...usualScatter, shutOffRatio: ratioU(unit) },
  today: {
    feedPressureKPaGauge: exact(at.feedPressureKPaGauge),
    temperatureC: exact(at.temperatureC),
    feedMgPerL: exact(at.feedMgPerL),
  },
  minimumKPaGauge,
});

/** Standard uncertainty of a shut-off's ratio: they are made from 0.60 to 0.67; with a permeate pump it is hardly known. */
const ratioU = ({ permeatePump }: Unit): number =>
  permeatePump ? usualShutOffRatioWithPump.u : usualScatter.shutOffRatio;

function chargeFor(unit: Unit, at: Conditions, minimumKPaGauge: number) {
  const {
    tanks: [tank],
    atmosphericKPa,
    shutOff,
  } = unit;
  if (!tank) return missing("tank_L");
  const feedKPaGauge = at.feedPressureKPaGauge;
  const shutOffRatio = { value: shutOff.ratio, u: ratioU(unit) };
  return bestCharge({ tank, feedKPaGauge, minimumKPaGauge, atmosphericKPa, shutOffRatio });
}

interface NewElement {
  readonly waterLPerM2HBar: number | undefined;
  readonly saltLPerM2H: number | undefined;
}

/** Another element of the same area goes in, where the row says what it lets through. */
function renewedColumns(unit: Unit, { waterLPerM2HBar, saltLPerM2H }: NewElement, question: HelpQuestion) {
  if (!(waterLPerM2HBar! > 0 && saltLPerM2H! > 0)) return {};
  const as = { waterLPerM2HBar: waterLPerM2HBar!, saltLPerM2H: saltLPerM2H! };
  const renewed = { ...unit, elements: unit.elements.map((one) => ({ ...one, ...as })) };
  const help = willItHelp(unit, renewed, { ...question, newElement: true });
  return {
    ...gainColumns("new_element_h", help.hoursToFill),
    ...gainColumns("new_element_mg_L", help.deliveredMgPerL),
  };
}

/** The analysis of the feed, where the row has one: scale is told only by it. */
const feedWater: Reader<WaterAnalysis | undefined> = mapReader(
  all({
    temperatureC: optional("T_C"),
    pH: optional("pH"),
    alkalinityMgPerLCaCO3: optional("Alk_CaCO3_mg"),
    ions: ionsIn(),
  }),
  ({ temperatureC, pH, alkalinityMgPerLCaCO3, ions }) =>
    known(
      temperatureC === undefined || pH === undefined || alkalinityMgPerLCaCO3 === undefined
        ? undefined
        : { temperatureC, pH, alkalinityMgPerLCaCO3, ions },
    ),
);

function inSeasons(feed: WaterAnalysis, seasons: Readonly<Record<Season, number>>) {
  const both = allKnown({
    winter: feedInSeason(feed, seasons.winter),
    summer: feedInSeason(feed, seasons.summer),
  });
  return both.kind === "known" ? { feed: both.value } : {};
}

const scaleColumns = (season: Season) => [`scale_${season}`, `scale_from_recovery_${season}`];

/** Which mineral settles first, and above which recovery; without an analysis both stay blank. */
function scaleCells(season: Season, restrictor: Outcome<RestrictorAnswer>): Record<string, string | number> {
  const scale = restrictor.kind === "known" ? restrictor.value.scale[season] : undefined;
  const [mineral, from] = scaleColumns(season) as [string, string];
  if (scale?.kind === "refused") return { [mineral]: String(scale.detail?.mineral ?? scale.code), [from]: 0 };
  if (scale?.kind !== "known") return { [mineral]: "", [from]: "" };
  return { [mineral]: scale.value.mineral ?? "none", [from]: scale.value.recovery };
}

/** `tapside unit questions`: best charge, restrictor for a wanted recovery winter and summer, what a second tank, a booster or a new element brings. */
export const unitQuestionsVerb = rowVerb({
  summary:
    "best charge, restrictor for a recovery in winter and summer below scale, and what a second tank, a booster or a new element would bring, a row",
  columns: [
    "best_charge_kPa_gauge",
    "usable_L",
    "usable_L_at_best",
    "restrictor_for_recovery_L_h",
    "recovery_winter",
    "recovery_summer",
    "recovery_set_by",
    ...scaleColumns("winter"),
    ...scaleColumns("summer"),
    ...withTail("second_tank_L"),
    ...withTail("booster_L"),
    ...withTail("booster_h"),
    ...withTail("new_element_h"),
    ...withTail("new_element_mg_L"),
  ],
  reads: all({
    unit: unitOfRow,
    at: emptyTankOfRow,
    minimumKPaGauge: notNegative("minimum_kPa_gauge", 0),
    seasons: seasonsOfRow,
    wantedRecovery: positive("wanted_recovery", 0.25),
    newBooster: all({
      shutOffRiseKPa: positive("new_booster_kPa", usualBooster.shutOffRiseKPa),
      openFlowLPerH: positive("new_booster_open_L_h", usualBooster.openFlowLPerH),
    }),
    newElement: all({
      waterLPerM2HBar: optional("new_A_L_m2_h_bar"),
      saltLPerM2H: optional("new_B_L_m2_h"),
    }),
    feed: feedWater,
    heldCalciteIndex: optional("inhibitor_calcite_SI"),
  }),
  answer: ({ unit, at, minimumKPaGauge, seasons, wantedRecovery, newBooster, newElement, feed, ...rest }) => {
    const question = asked(unit, at, minimumKPaGauge);
    const charge = chargeFor(unit, at, minimumKPaGauge);
    const inSeason = (temperatureC: number) => ({ ...at, temperatureC });
    const restrictor = restrictorForRecovery(unit, {
      seasons: { winter: inSeason(seasons.winter), summer: inSeason(seasons.summer) },
      wantedRecovery,
      ...(rest.heldCalciteIndex !== undefined && { limits: { calciteIndex: rest.heldCalciteIndex } }),
      ...(feed && inSeasons(feed, seasons)),
    });
    const second = willItHelp(unit, { ...unit, tanks: [...unit.tanks, ...unit.tanks] }, question);
    const boosted = willItHelp(unit, { ...unit, booster: newBooster }, question);
    return known({
      best_charge_kPa_gauge: cellOf(charge, (one) => one.chargeKPaGauge),
      usable_L: cellOf(charge, (one) => one.usableNowL.value),
      usable_L_at_best: cellOf(charge, (one) => one.usableL.value),
      restrictor_for_recovery_L_h: cellOf(restrictor, (one) => one.ratedLPerH),
      recovery_winter: cellOf(restrictor, (one) => one.recovery.winter.value),
      recovery_summer: cellOf(restrictor, (one) => one.recovery.summer.value),
      recovery_set_by: restrictor.kind === "known" ? restrictor.value.setBy : "",
      ...scaleCells("winter", restrictor),
      ...scaleCells("summer", restrictor),
      ...gainColumns("second_tank_L", second.usableL),
      ...gainColumns("booster_L", boosted.usableL),
      ...gainColumns("booster_h", boosted.hoursToFill),
      ...renewedColumns(unit, newElement, question),
    });
  },
});
