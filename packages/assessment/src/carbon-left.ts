import { known, missing, type Outcome, refused } from "@tapside/quantities";
import { type Phase, partsInService, type UnitFile } from "@tapside/records";
import { amountOf } from "./internal/amounts.ts";
import { replacedHere, type Visit } from "./internal/parts-in-service.ts";
import { phaseReadings, visitsUpTo } from "./internal/phase-readings.ts";

export interface CarbonLeft {
  readonly lowM3: number;
  readonly highM3: number;
  readonly usedM3: number;
  readonly ratedM3: number;
  /** Litres used over the capacity at the chlorine seen. */
  readonly usedShare: number;
}

const DEFAULT_RATED_CHLORINE = 2;

/**
 * Litres left in the carbon as a range. Capacity goes as the inverse of chlorine (rating × rated chlorine / chlorine); the low end never
 * counts on more than the rating, as one sample of chlorine is no history.
 * Source: carbon ratings at 0.5 to 2 mg/L have a constant product of litres and chlorine (common practice).
 */
export function carbonLeft(file: UnitFile, visit: Visit, phase: Phase): Outcome<CarbonLeft> {
  const carbon = partsInService(file, visit, phase, "carbon")[0];
  if (!carbon) return missing("part.carbon");
  const ratedM3 = (carbon.ratedLitres ?? 0) / 1000;
  if (!(ratedM3 > 0)) return missing("part.ratedLitres");
  if (phase === "asLeft" && replacedHere(visit, "carbon") && carbon.fittedVisit !== visit.id)
    return fresh(ratedM3);
  const usedM3 = carbonUsedM3(file, visit, carbon);
  if (usedM3.kind !== "known") return usedM3;
  const chlorine = chlorineSeen(file, visit, carbon.fittedOn);
  if (!chlorine) return missing("chlorineBefore");
  const ratedChlorine = carbon.ratedChlorineMgPerL ?? DEFAULT_RATED_CHLORINE;
  if (!(ratedChlorine > 0)) return missing("part.ratedChlorine");
  const product = ratedM3 * ratedChlorine;
  const [high, low] = [product / Math.max(0.05, chlorine.low), product / chlorine.high];
  return known({
    lowM3: Math.min(low, ratedM3) - usedM3.value,
    highM3: Math.max(high, Math.min(low, ratedM3)) - usedM3.value,
    usedM3: usedM3.value,
    ratedM3,
    usedShare: usedM3.value / (product / chlorine.middle),
  });
}

const fresh = (ratedM3: number): Outcome<CarbonLeft> =>
  known({ lowM3: ratedM3, highM3: ratedM3, usedM3: 0, ratedM3, usedShare: 0 });

/** Cubic metres by the meter since a part was fitted. */
export function carbonUsedM3(
  file: UnitFile,
  visit: Visit,
  part: { readonly meterAtFittingM3?: number; readonly fittedVisit?: string },
): Outcome<number> {
  const now = amountOf("waterMeter", { ...visit.readings.asFound, ...visit.readings.asLeft }, file);
  if (now.kind !== "known") return missing("waterMeter");
  const fitting = file.visits.find((one) => one.id === part.fittedVisit);
  const atFitting =
    fitting && amountOf("waterMeter", { ...fitting.readings.asFound, ...fitting.readings.asLeft }, file);
  const start = part.meterAtFittingM3 ?? (atFitting?.kind === "known" ? atFitting.value.value : undefined);
  if (start === undefined) return missing("part.meterAtFitting");
  const used = now.value.value - start;
  return used >= 0 ? known(used) : refused("meter-went-back", { usedM3: used });
}

/** Chlorine before the carbon over its service: the lowest and highest seen, each with its doubt. */
function chlorineSeen(file: UnitFile, visit: Visit, since: string | undefined) {
  const seen = visitsUpTo(file, visit)
    .filter((one) => (one.startedAt ?? "") >= (since ?? ""))
    .flatMap((one) => {
      const amount = amountOf("chlorineBefore", phaseReadings(one, "asFound"), file);
      return amount.kind === "known" ? [amount.value] : [];
    });
  if (seen.length === 0) return undefined;
  const middle = seen.reduce((sum, one) => sum + one.value, 0) / seen.length;
  const low = Math.min(...seen.map((one) => Math.max(0, one.value - one.u)));
  const high = Math.max(...seen.map((one) => one.value + one.u));
  return { low, high: Math.max(0.05, high), middle: Math.max(0.05, middle) };
}
