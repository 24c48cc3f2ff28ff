import { converted } from "@tapside/quantities";
import { type Change, exportFile, type FieldValue, NO_STAMP, nextStamp } from "@tapside/records";
import { operatingPoint, simpleUnit } from "@tapside/reverse-osmosis";
import { type DemoUnit, type DemoVisit, DISTRICT } from "./district.ts";
import { generatedDistrict } from "./generator/district-records.ts";
import { issuedRecords } from "./generator/issued-records.ts";
import { elementOf, PLATES, TEST } from "./generator/plates.ts";
import type { Edit } from "./generator/unit-records.ts";

const CUP_L = { permeate: 0.5, drain: 1 } as const;

/** What a technician reads at this visit: the model's numbers, rounded as instruments show them. */
function readingsOf(unit: DemoUnit, visit: DemoVisit): Readonly<Record<string, FieldValue>> {
  const element = elementOf(unit.plate);
  const plate = PLATES[unit.plate];
  const after = visit.feedPressurePsi - visit.filterDropPsi;
  const point = operatingPoint(
    simpleUnit(
      {
        ...element,
        waterLPerM2HBar: element.waterLPerM2HBar * visit.water,
        saltLPerM2H: element.saltLPerM2H * visit.salt,
      },
      { ratedLPerH: plate.rejectLPerH, ratedKPa: TEST.pressureKPaGauge },
    ),
    {
      feedPressureKPaGauge: converted(after, "psi", "kPa"),
      temperatureC: visit.temperatureC,
      feedMgPerL: visit.feedPpm,
      tankPressureKPaGauge: 0,
    },
  );
  if (point.kind !== "flowing") throw new Error(`nothing flows at ${unit.site}`);
  const at = `${visit.day}T09:30:00Z`;
  const solids = (value: number, port: string) => ({
    raw: value.toFixed(0),
    value: Math.round(value),
    unit: "ppm",
    scale: "NaCl",
    instrument: "demo:meter",
    port,
    at,
  });
  const gauge = (value: number, port: string) => ({
    raw: value.toFixed(1),
    value: Number(value.toFixed(1)),
    unit: "psi",
    instrument: "demo:gauge",
    port,
    at,
  });
  const cup = (lPerH: number, volumeL: number, port: string) => {
    const seconds = Math.round((volumeL / lPerH) * 3600);
    return { raw: String(seconds), value: seconds, unit: "s", volumeL, port, at };
  };
  const has = (port: string) => !unit.portsAbsent?.includes(port);
  const full = Math.round(0.64 * after);
  const chlorine = visit.chlorineAfter;
  return {
    "reading:asFound:feedTds": solids(visit.feedPpm, "feed"),
    "reading:asFound:feedTemperature": {
      raw: String(visit.temperatureC),
      value: visit.temperatureC,
      unit: "°C",
      port: "feed",
      at,
    },
    "reading:asFound:chlorineBefore": { raw: "0.9", value: 0.9, unit: "mg/L", port: "beforeFilter", at },
    "reading:asFound:chlorineAfter": {
      raw: String(chlorine ?? 0.1),
      value: chlorine ?? 0.1,
      unit: "mg/L",
      port: "afterFilter",
      at,
      ...(chlorine === undefined && { notDetected: true }),
    },
    "reading:asFound:permeateTds": solids(point.permeateMgPerL, "permeateToWaste"),
    "reading:asFound:deliveredTds": solids(point.permeateMgPerL * (visit.delivered ?? 1.6), "delivered"),
    "reading:asFound:permeateFlow": cup(point.permeateLPerH, CUP_L.permeate, "permeateToWaste"),
    "reading:asFound:drainFlow": cup(point.concentrateLPerH, CUP_L.drain, "drain"),
    ...(has("beforeFilter") && {
      "reading:asFound:beforeFilterPressure": gauge(visit.feedPressurePsi, "beforeFilter"),
    }),
    ...(has("afterFilter") && { "reading:asFound:afterFilterPressure": gauge(after, "afterFilter") }),
    ...(has("tank") && { "reading:asFound:tankFullPressure": gauge(full, "tank") }),
    ...(has("tank") &&
      visit.airPsi !== undefined && { "reading:asFound:airCharge": gauge(visit.airPsi, "tank") }),
    ...(has("meter") &&
      visit.meterM3 !== undefined && {
        "reading:asFound:waterMeter": {
          raw: String(visit.meterM3),
          value: visit.meterM3,
          unit: "m³",
          port: "meter",
          at,
        },
      }),
  };
}

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

function unitEdits(unit: DemoUnit, index: number): Edit[] {
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

const INSTRUMENTS: readonly Edit[] = [
  {
    kind: "instrument",
    record: "demo:meter",
    day: "2023-11-01",
    fields: {
      name: "Meter 7",
      kind: "tds",
      unit: "ppm",
      scale: "NaCl",
      accuracyPercentOfReading: 2,
      resolution: 1,
      lastCheckedOn: "2026-11-02",
      usual: true,
    },
  },
  {
    kind: "instrument",
    record: "demo:gauge",
    day: "2023-11-01",
    fields: {
      name: "Gauge 2",
      kind: "pressure",
      unit: "psi",
      accuracyPercentOfFullScale: 0.7,
      fullScale: 100,
      resolution: 0.5,
      usual: true,
    },
  },
  { kind: "settings", record: "settings", day: "2023-11-01", fields: { technician: "J. Orme" } },
];

/** The changes of these edits in the order of their days; the same edits give the same changes. */
function changesOf(edits: readonly Edit[]): readonly Change[] {
  let stamp = NO_STAMP;
  const inOrder = [...edits].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  return inOrder.map(({ kind, record, day, fields }, i): Change => {
    stamp = nextStamp(stamp, Date.parse(`${day}T09:00:00Z`));
    return {
      id: `demo-${String(i + 1).padStart(5, "0")}`,
      record,
      kind,
      fields,
      at: stamp,
      device: "demo",
      schema: 1,
    };
  });
}

/** An export file of these units; the same units give the same text. */
function demoFile(units: readonly DemoUnit[], more: readonly Edit[] = []): string {
  const edits = [...INSTRUMENTS, ...units.flatMap(unitEdits), ...more];
  return exportFile({ changes: changesOf([...edits, ...issuedRecords(changesOf(edits), more)]), photos: [] });
}

/** Ten units written by hand and fifty from the generator: 40 kitchens, three years. */
export function larkmoor(seed: string) {
  const generated = generatedDistrict(seed);
  return {
    book: demoFile(DISTRICT, generated.edits),
    truth: `${JSON.stringify(generated.truth)}\n`,
  };
}

const SEED = "Larkmoor";

/** File name and text of every example. */
export function examples(): Readonly<Record<string, string>> {
  const { book, truth } = larkmoor(SEED);
  return {
    "larkmoor.tapside.json": book,
    "larkmoor.truth.json": truth,
    "one-visit.tapside.json": demoFile(DISTRICT.slice(0, 1)),
  };
}
