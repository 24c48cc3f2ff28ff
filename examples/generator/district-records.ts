import { instrumentFields, TECHNICIANS } from "./instruments.ts";
import { lifeOf, type VisitTruth } from "./life.ts";
import { partEdits } from "./part-records.ts";
import { KITCHENS } from "./places.ts";
import { type Edit, siteEdit, unitEdits } from "./unit-records.ts";
import { type UnitTruth, unitTruths } from "./unit-truth.ts";
import { openPointEdits, visitEdit, visitId } from "./visit-records.ts";

interface LivedUnit {
  readonly unit: UnitTruth;
  readonly visits: readonly VisitTruth[];
}

export interface Generated {
  readonly edits: readonly Edit[];
  /** What is true and stands in no record: for tests only. */
  readonly truth: unknown;
}

/** The generated kitchens of the district: everything that was written down, and beside it what was true. */
export function generatedDistrict(seed: string): Generated {
  const lived = unitTruths(seed).map((unit): LivedUnit => ({ unit, visits: lifeOf(seed, unit) }));
  const sites = KITCHENS.map((_, kitchen) => {
    const days = lived.filter((one) => one.unit.kitchen === kitchen).map((one) => one.unit.begins);
    return siteEdit(seed, kitchen, days.sort()[0]!);
  });
  const bags = TECHNICIANS.flatMap((technician) =>
    instrumentFields(technician).map(
      ([record, fields]): Edit => ({ kind: "instrument", record, day: "2023-11-01", fields }),
    ),
  );
  const edits = lived.flatMap(({ unit, visits }, i) => {
    const place = lived.slice(0, i).filter((other) => other.unit.kitchen === unit.kitchen).length;
    return [
      ...unitEdits(seed, unit, place),
      ...partEdits(unit, visits),
      ...visits.map((visit) => visitEdit(seed, unit, visit)),
      ...openPointEdits(seed, unit, visits),
    ];
  });
  return { edits: [...bags, ...sites, ...edits], truth: { seed, units: lived.map(truthOf) } };
}

const short = (value: number) => Number(value.toPrecision(4));

function truthOf({ unit, visits }: LivedUnit) {
  const { key, water, salt, restrictor, shutOffRatio, troubles } = unit;
  return {
    unit: `${key}:unit`,
    water: short(water),
    salt: short(salt),
    restrictor: short(restrictor),
    shutOffRatio: short(shutOffRatio),
    troubles,
    visits: visits.map((visit) => ({
      visit: visitId(unit, visit),
      kind: visit.kind,
      water: short(visit.found.water),
      salt: short(visit.found.salt),
      chargePsi: short(visit.found.chargePsi),
      filterFactor: short(visit.found.filterFactor),
      troubles: visit.found.troubles.map((one) => one.id),
      repaired: visit.found.troubles.filter((one) => !visit.left.troubles.includes(one)).map((one) => one.id),
    })),
  };
}
