import type { Book, KeptVisit, UnitFile } from "@tapside/records";
import { unitFile } from "@tapside/records";
import { writeCsv } from "./csv.ts";

const LINE_COLUMNS = [
  "date",
  "site_code",
  "site",
  "unit",
  "serial",
  "visit",
  "visit_kind",
  "technician",
  "line",
  "minutes",
  "state",
  "reason",
  "part",
  "lot",
  "part_serial",
  "order_number",
  "quote_wanted",
] as const;

type Line = Partial<Record<(typeof LINE_COLUMNS)[number], string | number>>;

/** What the office bills from: one line per visit with its minutes, one per piece of work with part, lot and reason. No prices. */
export const workLinesCsv = (book: Book): string =>
  writeCsv(
    LINE_COLUMNS,
    filesOf(book).flatMap((file) => file.visits.flatMap((visit) => linesOf(file, visit))),
  );

const filesOf = (book: Book): readonly UnitFile[] =>
  [...book.unit.keys()].sort().flatMap((id) => unitFile(book, id) ?? []);

function linesOf(file: UnitFile, visit: KeptVisit): readonly Line[] {
  const { orderNumber, quoteWanted } = visit;
  const shared: Line = {
    date: (visit.startedAt ?? "").slice(0, 10),
    site_code: file.site.code ?? "",
    site: file.site.name ?? "",
    unit: file.unit.name ?? "",
    serial: file.unit.serial ?? "",
    visit: visit.id,
    visit_kind: visit.kind ?? "",
    technician: visit.technician ?? "",
    order_number: orderNumber ?? "",
  };
  const work = Object.entries(visit.work).map(([task, one]): Line => {
    const fitted = file.parts.find(
      (part) => part.fittedVisit === visit.id && task.startsWith(`replace:${part.role}`),
    );
    return {
      ...shared,
      line: task,
      state: one.state,
      reason: one.reason ?? "",
      part: fitted?.role ?? "",
      lot: one.lot ?? fitted?.lot ?? "",
      part_serial: fitted?.serial ?? "",
    };
  });
  const minutes = minutesOf(visit);
  return [
    { ...shared, line: "visit", ...(minutes !== undefined && { minutes }), quote_wanted: quoteWanted ?? "" },
    ...work,
  ];
}

/** Minutes as written, else from arrival to departure; nothing when either is missing. */
export function minutesOf(visit: KeptVisit): number | undefined {
  const times = (visit.answers as { readonly times?: Times }).times;
  if (times?.minutes !== undefined) return times.minutes;
  const start = Date.parse(times?.arrivedAt ?? visit.startedAt ?? "");
  const end = Date.parse(times?.leftAt ?? visit.endedAt ?? "");
  const minutes = Math.round((end - start) / 60_000);
  return Number.isFinite(minutes) && minutes >= 0 ? minutes : undefined;
}

interface Times {
  readonly arrivedAt?: string;
  readonly leftAt?: string;
  readonly minutes?: number;
}

const PART_COLUMNS = [
  "site_code",
  "site",
  "place",
  "unit",
  "unit_serial",
  "part",
  "position",
  "fitted_on",
  "removed_on",
  "lot",
  "part_serial",
  "rated_L",
  "meter_at_fitting_m3",
] as const;

/** Every part ever fitted, with lot and serial number. */
export const partsCsv = (book: Book): string =>
  writeCsv(
    PART_COLUMNS,
    filesOf(book).flatMap((file) =>
      file.parts.map((part) => ({
        site_code: file.site.code,
        site: file.site.name,
        place: file.point.name,
        unit: file.unit.name,
        unit_serial: file.unit.serial,
        part: part.role,
        position: part.position,
        fitted_on: part.fittedOn,
        removed_on: part.removedOn,
        lot: part.lot,
        part_serial: part.serial,
        rated_L: part.ratedLitres,
        meter_at_fitting_m3: part.meterAtFittingM3,
      })),
    ),
  );
