import type { CauseCounts, Kept } from "@tapside/records";
import { CAUSE_IDS, type CauseId } from "./causes.ts";
import type { CompanyCounts } from "./frequencies.ts";

/** What the assumed frequencies are worth until the company says otherwise. Assumed, no source. */
export const USUAL_WORTH = 60;

const isCount = (value: unknown): value is number =>
  typeof value === "number" && Number.isFinite(value) && value >= 0;

/** Counts from plain data: unknown causes and what is no count are left out; undefined when there is no version. */
export function countsFrom(entry: Partial<CauseCounts>): CompanyCounts | undefined {
  if (!isCount(entry.version)) return undefined;
  const found: Partial<Record<CauseId, number>> = {};
  for (const id of CAUSE_IDS) {
    const n = entry.found?.[id];
    if (isCount(n)) found[id] = n;
  }
  const assumedWorth = isCount(entry.assumedWorth) ? entry.assumedWorth : USUAL_WORTH;
  return { version: entry.version, asOf: entry.asOf ?? "", found, assumedWorth };
}

/** The newest version of the company's own counts in a book. */
export const countsInBook = (entries: ReadonlyMap<string, Kept<CauseCounts>>): CompanyCounts | undefined =>
  [...entries.values()].flatMap((entry) => countsFrom(entry) ?? []).sort((a, b) => b.version - a.version)[0];
