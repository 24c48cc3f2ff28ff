import { ownersOf, type PointSpan, unitHistory } from "@tapside/book";
import type { Book, Kept, KeptVisit, OpenPoint, ServiceRecordEntry, UnitFile } from "@tapside/records";
import { dayOf } from "./day-of.ts";

/** What the present owner may see of a unit: all, or what was in their time when nothing else was agreed. */
export interface ClaimShown {
  readonly visits: readonly KeptVisit[];
  /** Open and settled, of the visits shown. */
  readonly openPoints: readonly Kept<OpenPoint>[];
  /** Of the visits shown, oldest first. */
  readonly records: readonly Kept<ServiceRecordEntry>[];
  /** In service at some time of theirs. */
  readonly parts: UnitFile["parts"];
  readonly places: readonly PointSpan[];
  readonly owners: ReturnType<typeof ownersOf>;
}

/** What a claim file of this unit may show. */
export function claimShown(book: Book, file: UnitFile): ClaimShown {
  const owners = ownersOf(book, file.site.id);
  const from = owners.at(-1)?.seesFrom ?? "";
  const isTheirs = (until: string | undefined): boolean => until === undefined || until >= from;
  const visits = file.visits.filter((visit) => dayOf(visit.startedAt) >= from);
  const ids = new Set(visits.map((visit) => visit.id));
  const { id } = file.unit;
  return {
    visits,
    openPoints: [...book.openPoint.values()].filter(
      (point) => point.unit === id && ids.has(point.openedVisit ?? ""),
    ),
    records: [...book.serviceRecord.values()]
      .filter((record) => record.unit === id && ids.has(record.visit ?? ""))
      .sort((a, b) => ((a.issuedAt ?? "") < (b.issuedAt ?? "") ? -1 : 1)),
    parts: file.parts.filter((part) => isTheirs(part.removedOn)),
    places: unitHistory(book, id).filter((span) => isTheirs(span.until)),
    owners: owners.filter((owner) => owner.until === undefined || owner.until > from),
  };
}
