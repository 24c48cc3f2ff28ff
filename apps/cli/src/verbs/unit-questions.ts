import { allKnown, known, mapOutcome, type Outcome } from "@tapside/quantities";
import { bestCharge, type Gain, restrictorForRecovery, willItHelp } from "@tapside/reverse-osmosis";
import type { RowVerb } from "./row-verb.ts";
import { cell, conditionsOfRow, unitOfRow } from "./unit-row.ts";

const blank = (outcome: Outcome<number>): number | string => (outcome.kind === "known" ? outcome.value : "");

const gainColumns = (name: string, outcome: Outcome<Gain>): Record<string, string | number> =>
  outcome.kind === "known"
    ? {
        [name]: outcome.value.gain.value,
        [`${name}_low`]: outcome.value.gain.low,
        [`${name}_high`]: outcome.value.gain.high,
        [`${name}_says`]: outcome.value.verdict,
      }
    : { [name]: "", [`${name}_low`]: "", [`${name}_high`]: "", [`${name}_says`]: "cannotTell" };

const withTail = (name: string) => [name, `${name}_low`, `${name}_high`, `${name}_says`];

/** `tapside unit questions`: best charge, restrictor for a wanted recovery winter and summer, what a second tank or a booster brings. */
export const unitQuestionsVerb: RowVerb = {
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
  row: (row) => {
    const given = allKnown({
      unit: unitOfRow(row),
      at: conditionsOfRow({ ...row, tank_pressure_kPa_gauge: "0" }),
      minimumKPaGauge: cell(row, "minimum_kPa_gauge", 0),
      winterC: cell(row, "winter_C", 6),
      summerC: cell(row, "summer_C", 20),
      wantedRecovery: cell(row, "wanted_recovery", 0.25),
      boosterKPa: cell(row, "booster_kPa", 250),
    });
    return mapOutcome(given, (v) => {
      const { unit, at, minimumKPaGauge } = v;
      const exact = (value: number) => ({ value, u: 0 });
      const today = {
        feedPressureKPaGauge: exact(at.feedPressureKPaGauge),
        temperatureC: exact(at.temperatureC),
        feedMgPerL: exact(at.feedMgPerL),
      };
      const asked = { today, minimumKPaGauge };
      const [tank] = unit.tanks;
      const charge = tank
        ? bestCharge({
            tank,
            feedKPaGauge: at.feedPressureKPaGauge,
            minimumKPaGauge,
            atmosphericKPa: unit.atmosphericKPa,
            shutOffRatio: { value: unit.shutOff.ratio, u: 0.018 },
          })
        : ({ kind: "missing", missing: ["tank_L"] } as const);
      const seasons = {
        winter: { ...at, temperatureC: v.winterC },
        summer: { ...at, temperatureC: v.summerC },
      };
      const restrictor = restrictorForRecovery(unit, { seasons, wantedRecovery: v.wantedRecovery });
      const of = <T>(outcome: Outcome<T>, f: (value: T) => number) =>
        blank(mapOutcome(outcome, (value) => known(f(value))));
      const second = willItHelp(unit, { ...unit, tanks: [...unit.tanks, ...unit.tanks] }, asked);
      const booster = { shutOffRiseKPa: v.boosterKPa, openFlowLPerH: 300 };
      const boosted = willItHelp(unit, { ...unit, booster }, asked);
      return known({
        best_charge_kPa_gauge: of(charge, (one) => one.chargeKPaGauge),
        usable_L: of(charge, (one) => one.usableNowL.value),
        usable_L_at_best: of(charge, (one) => one.usableL.value),
        restrictor_for_recovery_L_h: of(restrictor, (one) => one.ratedLPerH),
        recovery_winter: of(restrictor, (one) => one.recovery.winter.value),
        recovery_summer: of(restrictor, (one) => one.recovery.summer.value),
        ...gainColumns("second_tank_L", second.usableL),
        ...gainColumns("booster_L", boosted.usableL),
        ...gainColumns("booster_h", boosted.hoursToFill),
      });
    });
  },
};
