import type { KeptVisit, UnitFile } from "@tapside/records";
import { ec25FromTds, type HistoryPoint } from "@tapside/water";

/** A meter's 2 % and the spread of one water over a day, relative. Common practice, no source. */
const HISTORY_U = 0.04;

/** Feed conductivity, µS/cm at 25 °C, at each visit that read it, oldest first; doubtful readings are left out. */
export const feedHistory = (
  visits: readonly KeptVisit[],
  { instruments }: Pick<UnitFile, "instruments">,
): readonly HistoryPoint[] =>
  visits
    .flatMap((visit) => pointOf(visit, instruments))
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));

function pointOf(visit: KeptVisit, instruments: UnitFile["instruments"]): HistoryPoint[] {
  const feed = visit.readings.asFound.feedTds;
  if (!feed || feed.doubtful || typeof feed.value !== "number" || !(feed.value > 0) || !visit.startedAt)
    return [];
  const ec =
    feed.unit === "µS/cm"
      ? feed.value
      : conductivityOf(feed.value, feed.scale ?? instruments.get(feed.instrument ?? "")?.scale ?? "NaCl");
  return ec === undefined ? [] : [{ at: visit.startedAt, value: ec, u: HISTORY_U * ec }];
}

function conductivityOf(ppm: number, scale: "NaCl" | "KCl" | "442"): number | undefined {
  const ec = ec25FromTds(ppm, scale);
  return ec.kind === "known" ? ec.value.value : undefined;
}
