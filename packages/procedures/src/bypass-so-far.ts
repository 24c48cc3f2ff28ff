import type { Outcome } from "@tapside/quantities";
import { inBaseUnit, type KeptVisit, type UnitFile } from "@tapside/records";
import { scaleAtMostG } from "./scale-at-most.ts";

export interface BypassSoFar {
  /** ISO date since which water goes past the unit, as far as the records know. */
  readonly since: string;
  readonly days: number;
  readonly litresPerDay?: number;
  readonly hardnessMgPerLAsCaCO3?: number;
  readonly scaleG: Outcome<number>;
}

/** The bypass as it stands at this visit on this day: since when, and the most scale it can have left. Undefined when the unit is in use. */
export function bypassSoFar(file: UnitFile, visit: KeptVisit, day: string): BypassSoFar | undefined {
  if (visit.answers.inUse !== "bypassed") return undefined;
  const earlier = file.visits.slice(
    0,
    file.visits.findIndex((one) => one.id === visit.id),
  );
  const since = visit.answers.bypass?.since ?? firstOf(earlier) ?? (visit.startedAt ?? day).slice(0, 10);
  const litresPerDay =
    visit.answers.bypass?.litresPerDay ??
    earlier.findLast((one) => one.answers.bypass?.litresPerDay)?.answers.bypass?.litresPerDay;
  const hardness = newestHardness([...earlier, visit]);
  const days = Math.max(0, Math.round((Date.parse(day) - Date.parse(since)) / 86_400_000)) || 0;
  return {
    since,
    days,
    ...(litresPerDay !== undefined && { litresPerDay }),
    ...(hardness !== undefined && { hardnessMgPerLAsCaCO3: hardness }),
    scaleG: scaleAtMostG({ hardnessMgPerLAsCaCO3: hardness, litresPerDay, days }),
  };
}

/** The first of the unbroken run of visits, up to the last, that left the unit bypassed. */
function firstOf(earlier: readonly KeptVisit[]): string | undefined {
  const stays = (visit: KeptVisit) => visit.answers.bypass?.decision === "keepBypassed";
  const looked = earlier.filter((visit) => visit.answers.inUse !== undefined);
  const lastInUse = looked.findLastIndex((visit) => !stays(visit));
  const first = looked[lastInUse + 1];
  return first && (first.answers.bypass?.since ?? first.startedAt?.slice(0, 10));
}

function newestHardness(visits: readonly KeptVisit[]): number | undefined {
  for (const visit of [...visits].reverse()) {
    const reading = visit.readings.asFound.hardness;
    if (reading?.value == null || reading.doubtful) continue;
    const base = inBaseUnit("hardness", reading.value, reading.unit);
    if (base.kind === "known") return base.value;
  }
  return undefined;
}
