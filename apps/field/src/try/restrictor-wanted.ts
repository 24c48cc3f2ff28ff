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

/** What is known of a scale inhibitor in the chain: none, one whose label says what it holds, one whose label does not. */
export type Inhibitor = "none" | "notSaid" | { readonly calciteIndex: number };

export function inhibitorOf({ parts }: Pick<UnitFile, "parts">): Inhibitor {
  const fitted = parts.filter(({ role, removedOn }) => role === "scaleInhibitor" && !removedOn);
  if (fitted.length === 0) return "none";
  const held = Math.max(
    ...fitted.map(({ heldCalciteIndex }) => heldCalciteIndex ?? Number.NEGATIVE_INFINITY),
  );
  return Number.isFinite(held) ? { calciteIndex: held } : "notSaid";
}

/** The restrictor for a recovery wanted of this unit in the warmer season, held below scale in both. */
export function restrictorWanted(
  { unit, conditions }: UnitAsRead,
  feed: Readonly<Record<Season, Outcome<WaterAnalysis>>>,
  { recovery, seasons }: Wanted,
  inhibitor: Inhibitor = "none",
): Outcome<RestrictorAnswer> {
  const { winter, summer } = feed;
  const at = (temperatureC: number) => ({ ...conditions, temperatureC, tankPressureKPaGauge: 0 });
  const question: RestrictorQuestion = {
    seasons: { winter: at(seasons.winter), summer: at(seasons.summer) },
    wantedRecovery: recovery,
    ...(typeof inhibitor === "object" && { limits: inhibitor }),
    ...(winter.kind === "known" &&
      summer.kind === "known" && { feed: { winter: winter.value, summer: summer.value } }),
  };
  return restrictorForRecovery(unit, question);
}
