import { converted } from "@tapside/quantities";
import type { FieldValue } from "@tapside/records";
import { buildFields } from "./build.ts";
import { KITCHENS, mainsName, personOf } from "./places.ts";
import { PLATES, TEST } from "./plates.ts";
import { randomOf } from "./random.ts";
import type { UnitTruth } from "./unit-truth.ts";

export interface Edit {
  readonly kind: string;
  readonly record: string;
  readonly day: string;
  readonly fields: Readonly<Record<string, FieldValue>>;
}

const APPLIANCES = [
  ["Combi oven", "combiOven", 100],
  ["Steamer", "steamer", 60],
  ["Ice maker", "ice", 150],
  ["Coffee machine", "coffee", 150],
  ["Dishwasher rinse", "dishwasher", 120],
] as const;

export const siteId = (kitchen: number) => `demo:kitchen${kitchen + 11}`;

/** The person who speaks for a kitchen. */
export const kitchenPerson = (seed: string, kitchen: number) => personOf(randomOf(seed, "person", kitchen));

/** A kitchen, once. */
export function siteEdit(seed: string, kitchen: number, day: string): Edit {
  const [name, main] = KITCHENS[kitchen]!;
  const [askName, askRole] = kitchenPerson(seed, kitchen);
  return {
    kind: "site",
    record: siteId(kitchen),
    day,
    fields: { name, askName, askRole, ...mainsName(main) },
  };
}

/** Point, unit, appliance and its limit. */
export function unitEdits(seed: string, unit: UnitTruth, place: number): readonly Edit[] {
  const { key, begins: day } = unit;
  const random = randomOf(seed, key, "label");
  const plate = PLATES[unit.plate];
  const [name, type, limit] = random.pick(APPLIANCES);
  const edit = (kind: string, record: string, fields: Edit["fields"]): Edit => ({
    kind,
    record: `${key}:${record}`,
    day,
    fields,
  });
  return [
    edit("point", "point", {
      site: siteId(unit.kitchen),
      name: ["Kitchen", "Back room", "Servery"][place]!,
      bypassFitted: random.chance(0.5) || unit.troubles.some((one) => one.id === "bypassed"),
    }),
    edit("unit", "unit", {
      point: `${key}:point`,
      name: `Unit ${place + 1}`,
      serial: `LM-${(1000 + random.whole(0, 8999)).toString()}`,
      fittedOn: unit.commissioned
        ? day
        : `${2017 + random.whole(0, 2)}-0${random.whole(1, 9)}-1${random.whole(0, 9)}`,
      ratedPermeateLPerH: plate.permeateLPerH,
      ratedRejectLPerH: plate.rejectLPerH,
      ratedRejectionPercent: Math.round(plate.rejection * 1000) / 10,
      membraneAreaM2: plate.areaM2,
      testPressureKPaGauge: TEST.pressureKPaGauge,
      testTemperatureC: TEST.temperatureC,
      testFeedMgPerL: TEST.feedMgPerL,
      tankL: unit.tankL,
      ...buildFields(unit.build),
      ...(unit.portsAbsent.length > 0 && { portsAbsent: unit.portsAbsent }),
      ...(unit.remineraliser && { remineraliser: true }),
    }),
    edit("appliance", "appliance", {
      site: siteId(unit.kitchen),
      point: `${key}:point`,
      name,
      type,
      minimumPressureKPaGauge: Math.round(10 * converted(unit.minimumPsi, "psi", "kPa")) / 10,
      litresPerDay: Math.round(unit.permeateLPerDay),
      usedFrom: "06:30",
      usedUntil: "14:30",
    }),
    ...(random.chance(0.75)
      ? [
          edit("limit", "limit", {
            appliance: `${key}:appliance`,
            quantity: "tds",
            high: limit,
            unit: "ppm",
            scale: "442",
            source: "appliance label",
          }),
        ]
      : []),
  ];
}
