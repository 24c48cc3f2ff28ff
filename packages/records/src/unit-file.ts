import type { Book, Kept, UnitFile } from "./book.ts";
import type { KindId, Kinds } from "./kinds.ts";

/**
 * Everything that bears on one unit, or undefined when the book has no such unit. A site or point that is
 * not in the book (yet) stands in by its id alone. Visits come oldest first; what was closed or refused stands apart.
 */
export function unitFile(book: Book, unitId: string): UnitFile | undefined {
  const unit = book.unit.get(unitId);
  if (!unit) return undefined;
  const point = book.point.get(unit.point ?? "") ?? { id: unit.point ?? "" };
  const site = book.site.get(point.site ?? "") ?? { id: point.site ?? "" };
  return {
    site,
    point,
    unit,
    appliances: appliancesAt(book, point.id),
    parts: all(book, "part", (part) => part.unit === unitId).sort(byPlace),
    instruments: book.instrument,
    visits: [...book.visit.values()].filter((visit) => visit.unit === unitId).sort(byStart),
    openPoints: all(book, "openPoint", (point) => point.unit === unitId && !isSettled(point)),
    settledPoints: all(book, "openPoint", (point) => point.unit === unitId && isSettled(point)),
    analyses: all(book, "waterAnalysis", (one) => one.site === site.id).sort((a, b) =>
      compare(a.sampledOn ?? "", b.sampledOn ?? ""),
    ),
  };
}

const isSettled = (point: Kept<Kinds["openPoint"]>): boolean =>
  Boolean(point.closedVisit || point.closedOn || point.refusedBy);

function appliancesAt(book: Book, point: string): UnitFile["appliances"] {
  return all(book, "appliance", (appliance) => appliance.point === point && point !== "").map(
    (appliance) => ({
      ...appliance,
      limits: all(book, "limit", (limit) => limit.appliance === appliance.id),
    }),
  );
}

/** Records of a kind that fit, by id, so that two books with the same content give the same order. */
function all<K extends Exclude<KindId, "visit">>(
  book: Book,
  kind: K,
  fits: (kept: Kept<Kinds[K]>) => boolean,
) {
  const shelf = book[kind] as ReadonlyMap<string, Kept<Kinds[K]>>;
  return [...shelf.values()].filter(fits).sort((a, b) => compare(a.id, b.id));
}

const compare = (a: string | number, b: string | number): number => (a < b ? -1 : a > b ? 1 : 0);

const byPlace = (a: Kept<Kinds["part"]>, b: Kept<Kinds["part"]>): number =>
  compare(a.position ?? Number.MAX_VALUE, b.position ?? Number.MAX_VALUE) ||
  compare(a.fittedOn ?? "", b.fittedOn ?? "") ||
  compare(a.id, b.id);

const byStart = (a: { startedAt?: string; id: string }, b: { startedAt?: string; id: string }): number =>
  compare(instant(a.startedAt), instant(b.startedAt)) || compare(a.id, b.id);

/** Offsets differ between devices, so starts compare as instants and not as text. */
function instant(iso: string | undefined): number {
  const ms = Date.parse(iso ?? "");
  return Number.isNaN(ms) ? 0 : ms;
}
