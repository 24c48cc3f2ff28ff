import { dayAfter } from "./calendar.ts";
import type { VisitTruth } from "./life.ts";
import type { Edit } from "./unit-records.ts";
import type { UnitTruth } from "./unit-truth.ts";
import { visitId } from "./visit-records.ts";

const CHAIN = ["sediment", "carbon", "element"] as const;
const SPARE = ["tank", "restrictor", "checkValve", "shutOff"] as const;

/** Parts with the days they came and went, lots and litres. */
export function partEdits(unit: UnitTruth, visits: readonly VisitTruth[]): readonly Edit[] {
  return [
    ...CHAIN.flatMap((role) => chainPart(unit, visits, role)),
    ...SPARE.flatMap((role) => spares(unit, visits, role)),
  ];
}

const has = (unit: UnitTruth, port: string) => !unit.portsAbsent.includes(port);

function chainPart(unit: UnitTruth, visits: readonly VisitTruth[], role: (typeof CHAIN)[number]): Edit[] {
  const first = visits[0]!;
  const before = role === "element" ? first.found.elementSince : dayAfter(unit.begins, -340);
  const original = part(
    unit,
    role,
    unit.commissioned ? unit.begins : before,
    undefined,
    unit.commissioned ? first : undefined,
  );
  const swaps = visits.filter((visit) => visit.done.includes(`replace:${role}`));
  const fitted = [original, ...swaps.map((visit) => part(unit, role, visit.day, visit, visit))];
  return fitted.flatMap((edit, i) => {
    const next = swaps[i];
    const gone: Edit[] = next
      ? [
          {
            kind: "part",
            record: edit.record,
            day: next.day,
            fields: { removedOn: next.day, removedVisit: visitId(unit, next) },
          },
        ]
      : [];
    return [{ ...edit, day: laterOf(edit.day, unit.begins) }, ...gone];
  });
}

function part(
  unit: UnitTruth,
  role: (typeof CHAIN)[number],
  day: string,
  swappedAt: VisitTruth | undefined,
  metered: VisitTruth | undefined,
): Edit {
  const lot = day.slice(2, 4) + day.slice(5, 7);
  const meter = metered && has(unit, "meter") ? Math.round(100 * metered.found.meterM3) / 100 : undefined;
  return {
    kind: "part",
    record: swappedAt ? `${visitId(unit, swappedAt)}:replace:${role}` : `${unit.key}:${role}0`,
    day,
    fields: {
      unit: `${unit.key}:unit`,
      role,
      position: CHAIN.indexOf(role) + 1,
      fittedOn: day,
      ...(swappedAt && { fittedVisit: visitId(unit, swappedAt), lot }),
      intervalMonths: role === "element" ? 24 : 12,
      ...(role === "carbon" && {
        ratedLitres: 76_000,
        ratedChlorineMgPerL: 2,
        ...(meter !== undefined && { meterAtFittingM3: meter }),
      }),
    },
  };
}

const spares = (unit: UnitTruth, visits: readonly VisitTruth[], role: (typeof SPARE)[number]): Edit[] =>
  visits
    .filter((visit) => visit.done.includes(`replace:${role}`))
    .map((visit) => ({
      kind: "part",
      record: `${visitId(unit, visit)}:replace:${role}`,
      day: visit.day,
      fields: {
        unit: `${unit.key}:unit`,
        role,
        fittedOn: visit.day,
        fittedVisit: visitId(unit, visit),
        lot: visit.day.slice(2, 4) + visit.day.slice(5, 7),
      },
    }));

const laterOf = (a: string, b: string): string => [a, b].sort()[1]!;
