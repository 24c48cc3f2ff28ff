import { converted } from "@tapside/quantities";
import type { DemoUnit, DemoVisit } from "../district.ts";
import { PLATES, TEST } from "../generator/plates.ts";
import type { Edit } from "../generator/unit-records.ts";
import { readingsOf } from "./readings-of.ts";

function visitEdits(unit: DemoUnit, key: string, visit: DemoVisit, number: number): Edit[] {
  const record = `${key}:visit${number}`;
  const bypass = visit.bypassedUntil;
  const fields = {
    unit: `${key}:unit`,
    point: `${key}:point`,
    kind: visit.kind,
    startedAt: `${visit.day}T09:00:00Z`,
    endedAt: `${visit.day}T10:40:00Z`,
    closed: true,
    technician: "J. Orme",
    "answer:inUse": bypass ? "bypassed" : "inUse",
    ...(bypass && {
      "answer:bypass": {
        name: unit.ask[0],
        role: unit.ask[1],
        decision: "keepBypassed",
        until: bypass,
        seal: "0417",
      },
    }),
    "answer:inspection": "asItShouldBe",
    "answer:signature": { kind: "signed", name: unit.ask[0], role: unit.ask[1] },
    ...Object.fromEntries(
      (visit.replaced ?? []).map((role) => [
        `work:replace:${role}`,
        { state: "done", lot: visit.day.slice(2, 4) + visit.day.slice(5, 7) },
      ]),
    ),
    ...readingsOf(unit, visit),
  };
  return [{ kind: "visit", record, day: visit.day, fields }];
}

function partEdits(unit: DemoUnit, key: string): Edit[] {
  const first = unit.visits[0]!;
  const part = (
    role: string,
    fittedOn: string,
    meter: number | undefined,
    position: number,
    n: number,
  ): Edit => ({
    kind: "part",
    record: `${key}:${role}${n}`,
    day: fittedOn,
    fields: {
      unit: `${key}:unit`,
      role,
      position,
      fittedOn,
      intervalMonths: role === "element" ? 24 : 12,
      ...(role === "carbon" && {
        ratedLitres: 57_000,
        ratedChlorineMgPerL: 2,
        ...(meter !== undefined && { meterAtFittingM3: meter }),
      }),
    },
  });
  const swaps = ["sediment", "carbon"].flatMap((role, i) => {
    const fitted = unit.visits.filter((visit, n) => n === 0 || visit.replaced?.includes(role));
    return fitted.flatMap((visit, n) => {
      const edit = part(role, visit.day, visit.meterM3, i + 1, n);
      const next = fitted[n + 1];
      return next
        ? [edit, { kind: "part", record: edit.record, day: next.day, fields: { removedOn: next.day } }]
        : [edit];
    });
  });
  return [...swaps, part("element", first.day, undefined, 3, 0)];
}

/** Everything on record of one unit written by hand. */
export function unitEdits(unit: DemoUnit, index: number): Edit[] {
  const key = `demo:${index + 1}`;
  const day = unit.visits[0]!.day;
  const plate = PLATES[unit.plate];
  const [applianceName, type, minimumPsi, limitPpm] = unit.appliance;
  const edit = (kind: string, record: string, fields: Edit["fields"]): Edit => ({
    kind,
    record: `${key}:${record}`,
    day,
    fields,
  });
  return [
    edit("site", "site", {
      name: unit.site,
      askName: unit.ask[0],
      askRole: unit.ask[1],
      waterSource: "Larkmoor town water",
      ...(unit.altitudeM !== undefined && { altitudeM: unit.altitudeM }),
    }),
    edit("point", "point", {
      site: `${key}:site`,
      name: "Kitchen",
      bypassFitted: unit.bypassFitted ?? false,
    }),
    edit("unit", "unit", {
      point: `${key}:point`,
      name: "Unit 1",
      ratedPermeateLPerH: plate.permeateLPerH,
      ratedRejectLPerH: plate.rejectLPerH,
      ratedRejectionPercent: plate.rejection * 100,
      membraneAreaM2: plate.areaM2,
      testPressureKPaGauge: TEST.pressureKPaGauge,
      testTemperatureC: TEST.temperatureC,
      testFeedMgPerL: TEST.feedMgPerL,
      tankL: unit.tankL,
      ...(unit.portsAbsent && { portsAbsent: unit.portsAbsent }),
      ...(unit.remineraliser && { remineraliser: true }),
    }),
    edit("appliance", "appliance", {
      site: `${key}:site`,
      point: `${key}:point`,
      name: applianceName,
      type,
      ...MADE_OF[type],
      ...(unit.busyDay && {
        litresPerDay: unit.busyDay[0],
        usedFrom: unit.busyDay[1],
        usedUntil: unit.busyDay[2],
      }),
      ...(minimumPsi !== null && { minimumPressureKPaGauge: converted(minimumPsi, "psi", "kPa") }),
    }),
    ...(limitPpm === null
      ? []
      : [
          edit("limit", "limit", {
            appliance: `${key}:appliance`,
            quantity: "tds",
            high: limitPpm,
            unit: "ppm",
            scale: "442",
            source: "appliance label",
          }),
        ]),
    ...partEdits(unit, key),
    ...unit.visits.flatMap((visit, n) => visitEdits(unit, key, visit, n + 1)),
  ];
}

/** What a district's manuals say of the wetted parts; of ice makers and dispensers nobody looked it up. */
const MADE_OF: Readonly<Record<string, object>> = {
  combiOven: { steelGrade: "316", copperOrBrass: false },
  steamer: { steelGrade: "304", copperOrBrass: false },
  coffee: { steelGrade: "316", copperOrBrass: false },
  dishwasher: { steelGrade: "304", copperOrBrass: false },
};
