import { known, missing, type Outcome, type Uncertain } from "@tapside/quantities";
import {
  bestCharge,
  type Conditions,
  type Gain,
  restrictorForRecovery,
  type Unit,
  usualBooster,
  willItHelp,
} from "@tapside/reverse-osmosis";
import { all, notNegative, positive } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { emptyTankOfRow, seasonsOfRow, unitOfRow } from "./unit-row.ts";

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
const asked = (at: Conditions, minimumKPaGauge: number) => ({
  today: {
    feedPressureKPaGauge: exact(at.feedPressureKPaGauge),
    temperatureC: exact(at.temperatureC),
    feedMgPerL: exact(at.feedMgPerL),
  },
  minimumKPaGauge,
});

/** Standard uncertainty of a shut-off's ratio: they are made from 0.60 to 0.67. */
const RATIO_U = 0.018;

function chargeFor(
  { tanks: [tank], atmosphericKPa, shutOff }: Unit,
  at: Conditions,
  minimumKPaGauge: number,
) {
  if (!tank) return missing("tank_L");
  const feedKPaGauge = at.feedPressureKPaGauge;
  const shutOffRatio = { value: shutOff.ratio, u: RATIO_U };
  return bestCharge({ tank, feedKPaGauge, minimumKPaGauge, atmosphericKPa, shutOffRatio });
}

/** `tapside unit questions`: best charge, restrictor for a wanted recovery winter and summer, what a second tank or a booster brings. */
export const unitQuestionsVerb = rowVerb({
  summary:
    "best charge, restrictor for a recovery in winter and summer, and what a second tank or a booster would bring, a row",
  columns: [
    "best_charge_kPa_gauge",
    "usable_L",
    "usable_L_at_best",
    "restrictor_for_recovery_L_h",
    "recovery_winter",
    "recovery_summer",
    ...withTail("second_tank_L"),
    ...withTail("booster_L"),
    ...withTail("booster_h"),
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
  }),
  answer: ({ unit, at, minimumKPaGauge, seasons, wantedRecovery, newBooster }) => {
    const question = asked(at, minimumKPaGauge);
    const charge = chargeFor(unit, at, minimumKPaGauge);
    const inSeason = (temperatureC: number) => ({ ...at, temperatureC });
    const restrictor = restrictorForRecovery(unit, {
      seasons: { winter: inSeason(seasons.winter), summer: inSeason(seasons.summer) },
      wantedRecovery,
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
      ...gainColumns("second_tank_L", second.usableL),
      ...gainColumns("booster_L", boosted.usableL),
      ...gainColumns("booster_h", boosted.hoursToFill),
    });
  },
});
