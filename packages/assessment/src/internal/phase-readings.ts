import { type Phase, type SlotId, type UnitFile, USUAL_DRAW_L } from "@tapside/records";
import type { PhaseReadings } from "./amounts.ts";
import type { Visit } from "./parts-in-service.ts";
import { rememberWith } from "./remember-with.ts";

/** What an as-left judgement takes over from as found: the water and the supply are the same that morning. */
const CARRIED: readonly SlotId[] = [
  "feedTds",
  "feedTemperature",
  "chlorineBefore",
  "staticPressure",
  "beforeFilterPressure",
];

/** The readings that count for a phase: ports that do not exist are left out, eight litres drawn unless said otherwise. */
export const phaseReadings = rememberWith((visit: Visit, phase: Phase): PhaseReadings => {
  if (phase === "asFound") return withDraw(visit.readings.asFound);
  const own = visit.readings.asLeft;
  if (Object.keys(own).length === 0) return {};
  const carried = Object.fromEntries(
    CARRIED.flatMap((slot) => (visit.readings.asFound[slot] ? [[slot, visit.readings.asFound[slot]]] : [])),
  );
  return { ...carried, ...own };
});

function withDraw(readings: PhaseReadings): PhaseReadings {
  const after = readings.tankAfterPressure;
  if (!after || readings.drawnVolume) return readings;
  const drawnVolume = {
    raw: String(USUAL_DRAW_L),
    value: USUAL_DRAW_L,
    unit: "L",
    port: "delivered",
    at: after.at,
  } as const;
  return { ...readings, drawnVolume };
}

/** Visits up to and including this one, oldest first. */
export function visitsUpTo(file: UnitFile, visit: Visit): readonly Visit[] {
  const index = file.visits.findIndex((one) => one.id === visit.id);
  return index < 0 ? file.visits : file.visits.slice(0, index + 1);
}
