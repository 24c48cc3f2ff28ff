import { type FieldValue, type KindId, leavesFilling, type PartRole } from "@tapside/records";
import type { OpenVisit } from "./use-visit.ts";

interface Write {
  readonly kind: KindId;
  readonly record: string;
  readonly fields: Readonly<Record<string, FieldValue>>;
}

/** What the end of a visit leaves in the book: parts swapped, points left open, the visit ended. */
export function writesAtTheEnd(open: OpenVisit, endedAt: string): readonly Write[] {
  return [
    ...swappedParts(open, endedAt),
    ...pointsLeftOpen(open),
    ...pointsOvertaken(open, endedAt),
    { kind: "visit", record: open.visit.id, fields: { endedAt, closed: true } },
  ];
}

/** Every part replaced in this visit: the old one retired, the new one fitted today with the meter reading. */
function swappedParts(open: OpenVisit, endedAt: string): Write[] {
  const day = endedAt.slice(0, 10);
  return Object.entries(open.visit.work).flatMap(([task, work]) => {
    if (work.state !== "done" || !task.startsWith("replace:")) return [];
    const role = task.split(":")[1] as PartRole;
    const old = open.file.parts.find(
      (part) => !part.removedOn && (work.part ? part.id === work.part : part.role === role),
    );
    const meter = open.visit.readings.asFound.waterMeter;
    const fitted: Write = {
      kind: "part",
      record: `${open.visit.id}:${task}`,
      fields: {
        unit: open.file.unit.id,
        role,
        position: old?.position ?? null,
        fittedOn: day,
        fittedVisit: open.visit.id,
        lot: work.lot ?? null,
        serial: work.serial ?? null,
        ratedLitres: old?.ratedLitres ?? null,
        ratedChlorineMgPerL: old?.ratedChlorineMgPerL ?? null,
        intervalMonths: old?.intervalMonths ?? null,
        ratedHours: old?.ratedHours ?? null,
        hoursAtFitting: open.visit.readings.asFound.hourCounter?.value ?? null,
        meterAtFittingM3: meter?.unit === "m³" ? meter.value : null,
      },
    };
    const retired: Write[] = old
      ? [{ kind: "part", record: old.id, fields: { removedOn: day, removedVisit: open.visit.id } }]
      : [];
    return [...retired, fitted];
  });
}

/** Earlier points this visit has answered: the work is done, the unit is back in use, or the same is left open anew. */
function pointsOvertaken(open: OpenVisit, endedAt: string): Write[] {
  const { visit, file } = open;
  const anew = pointsLeftOpen(open).map((write) => write.fields.code);
  const answered = (code: string) =>
    anew.includes(code) ||
    visit.work[code.replace(/^work:/, "")]?.state === "done" ||
    (code === "fillingNotSeen" && visit.answers.filling?.state === "seen") ||
    (code === "noAccess" && !visit.answers.noAccess && visit.kind !== "survey") ||
    (code === "shutDown" && visit.kind === "restart" && visit.work.restart?.state === "done") ||
    (code === "bypassed" && visit.answers.inUse !== undefined && !anew.includes("bypassed"));
  return file.openPoints
    .filter((point) => point.openedVisit !== visit.id && answered(point.code ?? ""))
    .map((point) => ({
      kind: "openPoint",
      record: point.id,
      fields: { closedVisit: visit.id, closedOn: endedAt.slice(0, 10) },
    }));
}

/** What was not seen or not done comes back at the next visit until it is closed or refused by a named person. */
function pointsLeftOpen(open: OpenVisit): Write[] {
  const { visit, file } = open;
  const point = (code: string, detail: string | null): Write => ({
    kind: "openPoint",
    record: `${visit.id}:${code}`,
    fields: { unit: file.unit.id, openedVisit: visit.id, code, detail, owner: file.site.askName ?? null },
  });
  const left = Object.entries(visit.work)
    .filter(([, work]) => work.state === "left")
    .map(([task, work]) => point(`work:${task}`, work.reason ?? null));
  const exceptions = Object.entries(visit.exceptions)
    .filter(([, exception]) => exception.state !== "corrected")
    .map(([item, exception]) => point(`exception:${item}`, exception.note ?? null));
  const filling =
    visit.answers.filling?.state === "seen" || !leavesFilling(visit) ? [] : [point("fillingNotSeen", null)];
  const notDone = visit.answers.noAccess ? [point("noAccess", visit.answers.noAccess.note ?? null)] : [];
  const shut =
    visit.kind === "shutDown" && visit.work.shutDown?.state === "done" ? [point("shutDown", null)] : [];
  const bypass =
    visit.answers.bypass?.decision === "keepBypassed"
      ? [point("bypassed", visit.answers.bypass.until ?? null)]
      : [];
  return [...left, ...exceptions, ...filling, ...bypass, ...notDone, ...shut];
}
