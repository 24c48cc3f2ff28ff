import type { KeptVisit } from "@tapside/records";
import { confirmedIn } from "./answers-of.ts";
import { CAUSE_IDS, type CauseId } from "./causes.ts";

/** How often each cause was put right and confirmed, over the closed visits of a book. */
export function foundInBook(visits: Iterable<KeptVisit>): Readonly<Partial<Record<CauseId, number>>> {
  const found = [...visits].filter(({ closed }) => closed).flatMap((visit) => confirmedIn({ visit }));
  const counted = CAUSE_IDS.map((id) => [id, found.filter((one) => one === id).length] as const);
  return Object.fromEntries(counted.filter(([, n]) => n > 0));
}

/** Counts that hold at least what the book shows; the same again changes nothing. */
export const withFound = (
  counted: Readonly<Partial<Record<CauseId, number>>>,
  found: Readonly<Partial<Record<CauseId, number>>>,
): Readonly<Partial<Record<CauseId, number>>> => ({
  ...counted,
  ...Object.fromEntries(
    Object.entries(found).map(([id, n]) => [id, Math.max(n, counted[id as CauseId] ?? 0)]),
  ),
});
