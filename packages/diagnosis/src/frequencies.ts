import { CAUSE_IDS, CAUSES, type CauseId } from "./causes.ts";

/** What the company found itself, by cause: a versioned record. Until there are many, the assumed frequencies speak louder. */
export interface CompanyCounts {
  readonly version: number;
  /** ISO 8601 date up to which visits were counted. */
  readonly asOf: string;
  readonly found: Readonly<Partial<Record<CauseId, number>>>;
  /** How many found causes the assumed frequencies are worth. */
  readonly assumedWorth: number;
}

/** Share of each cause, in the order of `CAUSE_IDS`, adding up to 1. */
export type Frequencies = readonly number[];

/**
 * How often each cause is met: the assumed weights, moved by what was found (Dirichlet mean).
 *
 * Formula: (worth · wᵢ/Σw + nᵢ)/(worth + Σn)
 * Source: Dirichlet–multinomial mean, textbook; weights assumed.
 * Range: counts of found and confirmed causes.
 * Error: that of the counts; 10 of one kind are known to about a third.
 * @example
 * ```ts
 * import { CAUSE_IDS, frequencies } from "@tapside/diagnosis";
 * const counts = { version: 1, asOf: "2026-11-25", found: { checkValveFailed: 20 }, assumedWorth: 60 };
 * frequencies(counts)[CAUSE_IDS.indexOf("checkValveFailed")]; // => 0.271
 * ```
 */
export function frequencies(counts?: CompanyCounts): Frequencies {
  const total = CAUSE_IDS.reduce((sum, id) => sum + CAUSES[id].weight, 0);
  const assumed = CAUSE_IDS.map((id) => CAUSES[id].weight / total);
  if (!counts) return assumed;
  const found = CAUSE_IDS.map((id) => Math.max(0, counts.found[id] ?? 0));
  const all = counts.assumedWorth + found.reduce((sum, n) => sum + n, 0);
  return all > 0 ? assumed.map((share, i) => (counts.assumedWorth * share + found[i]!) / all) : assumed;
}
