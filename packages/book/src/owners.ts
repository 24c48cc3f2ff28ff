import type { Book } from "@tapside/records";

/** An owner and the days that are theirs: from `since` until the day before `until`. */
export interface OwnerSpan {
  readonly owner: string;
  readonly since: string;
  readonly until?: string;
  /** First day of what this owner may see; empty when everything. */
  readonly seesFrom: string;
}

/** Owners of a site, oldest first. Each sees what was in their time, the later one earlier history only where it was agreed. */
export function ownersOf(book: Book, site: string): readonly OwnerSpan[] {
  const changes = [...book.ownership.values()]
    .filter((one) => one.site === site && one.since && one.owner)
    .sort((a, b) => (a.since! < b.since! ? -1 : 1));
  return changes.map((one, i) => ({
    owner: one.owner!,
    since: one.since!,
    ...(changes[i + 1] && { until: changes[i + 1]!.since! }),
    seesFrom: i === 0 || one.seesEarlier ? "" : one.since!,
  }));
}
