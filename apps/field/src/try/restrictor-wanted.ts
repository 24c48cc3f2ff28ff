import { feedWaterReadings, type UnitAsRead, waterAtOnce } from "@tapside/assessment";
import { mapOutcome, missing, type Outcome } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import {
  feedInSeason,
  type RestrictorAnswer,
  type RestrictorQuestion,
  restrictorForRecovery,
  type Season,
} from "@tapside/reverse-osmosis";
import type { WaterAnalysis } from "@tapside/water";

export interface Wanted {
  readonly recovery: number;
  readonly seasons: Readonly<Record<Season, number>>;
}

/** The feed of a unit in one season, completed in the middle of what was read of it last. */
export function feedIn(file: UnitFile, temperatureC: number): Outcome<WaterAnalysis> {
  const newest = [...file.visits].reverse().find(({ readings }) => readings.asFound.feedTds);
  if (!newest && !file.analyses?.length) return missing("feedTds");
  const readings = feedWaterReadings(newest ?? { readings: { asFound: {}, asLeft: {} } }, file);
  return mapOutcome(waterAtOnce(readings), (water) => feedInSeason(water, temperatureC));
}

/** The restrictor for a recovery wanted of this unit in the warmer season, held below scale in both. */
export function restrictorWanted(
  { unit, conditions }: UnitAsRead,
  feed: Readonly<Record<Season, Outcome<WaterAnalysis>>>,
  { recovery, seasons }: Wanted,
): Outcome<RestrictorAnswer> {
  const { winter, summer } = feed;
  const at = (temperatureC: number) => ({ ...conditions, temperatureC, tankPressureKPaGauge: 0 });
  const question: RestrictorQuestion = {
    seasons: { winter: at(seasons.winter), summer: at(seasons.summer) },
    wantedRecovery: recovery,
    ...(winter.kind === "known" &&
      summer.kind === "known" && { feed: { winter: winter.value, summer: summer.value } }),
  };
  return restrictorForRecovery(unit, question);
}
