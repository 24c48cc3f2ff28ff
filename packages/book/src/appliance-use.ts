import type { UnitFile } from "@tapside/records";
import { daysBetween } from "./days.ts";

/** An appliance's own counter: where it stood, and what is used a day between the last two readings far enough apart. */
export interface ApplianceUse {
  readonly appliance: string;
  readonly name: string;
  readonly unit: string;
  readonly on: string;
  readonly value: number;
  /** Absent with one reading, or when the counter was set back. */
  readonly perDay?: number;
  readonly since?: string;
}

/** Two readings nearer together than this say little about a usual day. */
const SHORTEST_DAYS = 7;

/** Use of every appliance that was counted, up to and with a visit where one is named. */
export function applianceUse(file: UnitFile, upTo?: string): readonly ApplianceUse[] {
  const end = upTo === undefined ? -1 : file.visits.findIndex((visit) => visit.id === upTo);
  const visits = end < 0 ? file.visits : file.visits.slice(0, end + 1);
  return file.appliances.flatMap(({ id, name = "" }) => {
    const read = visits.flatMap((visit) => {
      const one = visit.answers.counters?.[id];
      return one && visit.startedAt ? [{ ...one, on: visit.startedAt.slice(0, 10) }] : [];
    });
    const last = read.at(-1);
    if (!last) return [];
    const before = read.findLast(
      (one) => one.unit === last.unit && daysBetween(one.on, last.on) >= SHORTEST_DAYS,
    );
    const said = { appliance: id, name, unit: last.unit, on: last.on, value: last.value };
    if (!before || before.value > last.value) return [said];
    return [
      { ...said, perDay: (last.value - before.value) / daysBetween(before.on, last.on), since: before.on },
    ];
  });
}
