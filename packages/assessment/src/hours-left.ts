import type { Kept, Part, UnitFile } from "@tapside/records";
import { amountOf } from "./internal/amounts.ts";
import type { Visit } from "./internal/parts-in-service.ts";

/**
 * Hours of running a part has left: what it is made for, less what the counter has gone on since it was fitted. Undefined where it is
 * made for no hours, no counter was read, or the counter has gone back.
 */
export function hoursLeft(file: UnitFile, visit: Visit, part: Kept<Part>): number | undefined {
  if (!(part.ratedHours! > 0)) return undefined;
  const now = counterAt(file, visit);
  const fitting = file.visits.find((one) => one.id === part.fittedVisit);
  const start = part.hoursAtFitting ?? (fitting && counterAt(file, fitting));
  if (now === undefined || start === undefined || now < start) return undefined;
  return part.ratedHours! - (now - start);
}

function counterAt(file: UnitFile, { readings }: Visit): number | undefined {
  const read = amountOf("hourCounter", { ...readings.asFound, ...readings.asLeft }, file);
  return read.kind === "known" ? read.value.value : undefined;
}
