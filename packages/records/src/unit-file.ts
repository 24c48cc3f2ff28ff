import type { Book, Kept, UnitFile } from "./book.ts";
import type { Kinds } from "./kinds.ts";

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
    parts: [...children(book.part, "unit", unitId)].sort(byPlace),
    instruments: book.instrument,
    visits: oldestFirst(children(book.visit, "unit", unitId)),
    openPoints: children(book.openPoint, "unit", unitId).filter((point) => !isSettled(point)),
    settledPoints: children(book.openPoint, "unit", unitId).filter(isSettled),
    analyses: [...children(book.waterAnalysis, "site", site.id)].sort((a, b) =>
      compare(a.sampledOn ?? "", b.sampledOn ?? ""),
    ),
  };
}

const isSettled = (point: Kept<Kinds["openPoint"]>): boolean =>
  Boolean(point.closedVisit || point.closedOn || point.refusedBy);

function appliancesAt(book: Book, point: string): UnitFile["appliances"] {
  if (point === "") return [];
  return children(book.appliance, "point", point).map((appliance) => withModel(book, appliance));
}

/** An appliance with its own limits, then those of its type that it does not set itself. */
function withModel(book: Book, appliance: Kept<Kinds["appliance"]>): UnitFile["appliances"][number] {
  const model = book.model.get(appliance.model ?? "");
  const own = children(book.limit, "appliance", appliance.id);
  const shared = model
    ? children(book.limit, "appliance", model.id)
        .filter((limit) => !own.some((one) => one.quantity === limit.quantity))
        .map((limit) => ({ ...sourceOf(model), ...limit }))
    : [];
  const pressure = appliance.minimumPressureKPaGauge ?? model?.minimumPressureKPaGauge;
  return {
    ...appliance,
    ...(pressure !== undefined && { minimumPressureKPaGauge: pressure }),
    limits: [...own, ...shared],
  };
}

const sourceOf = ({ source, sourceDate }: Kept<Kinds["model"]>) => ({
  ...(source !== undefined && { source }),
  ...(sourceDate !== undefined && { sourceDate }),
});

/** Children by parent, for shelves already looked through: a shelf never changes, a new one takes its place. */
const grouped = new WeakMap<object, ReadonlyMap<string, readonly { readonly id: string }[]>>();

/** The records of a shelf under one parent, by id, so that two books with the same content give the same order. */
function children<T extends { readonly id: string }>(
  shelf: ReadonlyMap<string, T>,
  parent: keyof T & string,
  id: string,
): readonly T[] {
  const groups = grouped.get(shelf) ?? groupsOf(shelf, parent);
  grouped.set(shelf, groups);
  return (groups.get(id) ?? []) as readonly T[];
}

function groupsOf<T extends { readonly id: string }>(
  shelf: ReadonlyMap<string, T>,
  parent: keyof T & string,
) {
  const groups = new Map<string, T[]>();
  for (const kept of shelf.values()) {
    const key = String(kept[parent] ?? "");
    const group = groups.get(key);
    if (group) group.push(kept);
    else groups.set(key, [kept]);
  }
  for (const group of groups.values()) group.sort((a, b) => compare(a.id, b.id));
  return groups;
}

const compare = (a: string | number, b: string | number): number => (a < b ? -1 : a > b ? 1 : 0);

const byPlace = (a: Kept<Kinds["part"]>, b: Kept<Kinds["part"]>): number =>
  compare(a.position ?? Number.MAX_VALUE, b.position ?? Number.MAX_VALUE) ||
  compare(a.fittedOn ?? "", b.fittedOn ?? "") ||
  compare(a.id, b.id);

/** By start, then by id; each start is read once. */
const oldestFirst = <T extends { readonly startedAt?: string; readonly id: string }>(visits: readonly T[]) =>
  visits
    .map((visit) => ({ visit, start: instant(visit.startedAt) }))
    .sort((a, b) => compare(a.start, b.start) || compare(a.visit.id, b.visit.id))
    .map(({ visit }) => visit);

/** Offsets differ between devices, so starts compare as instants and not as text. */
function instant(iso: string | undefined): number {
  const ms = Date.parse(iso ?? "");
  return Number.isNaN(ms) ? 0 : ms;
}
