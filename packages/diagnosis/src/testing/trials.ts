import type { KeptVisit, Part, Phase, Reading, SlotId, Unit, UnitFile, VisitKind } from "@tapside/records";
import { SLOTS } from "@tapside/records";

type Typed = readonly [value: number, unit: string, more?: Partial<Reading>];
type TypedReadings = Readonly<Partial<Record<SlotId, Typed>>>;

const ppm = (value: number, scale: "NaCl" | "442" = "NaCl"): Typed => [value, "ppm", { scale }];
const cup = (litres: number, seconds: number): Typed => [seconds, "s", { volumeL: litres }];
const nothingSeen: Typed = [0.1, "mg/L", { notDetected: true }];

const readingsOf = (typed: TypedReadings, at: string): KeptVisit["readings"][Phase] =>
  Object.fromEntries(
    Object.entries(typed).map(([slot, [value, unit, more]]) => [
      slot,
      { raw: String(value), value, unit, port: SLOTS[slot as SlotId].port, at, ...more },
    ]),
  );

function visit(
  id: string,
  kind: VisitKind,
  day: string,
  asFound: TypedReadings,
  answers: object = {},
): KeptVisit {
  const at = `${day}T06:30:00+00:00`;
  return {
    id,
    kind,
    unit: "unit",
    point: "point",
    startedAt: at,
    readings: { asFound: readingsOf(asFound, at), asLeft: {} },
    answers,
    exceptions: {},
    work: {},
    photos: {},
    skipped: [],
  } as KeptVisit;
}

function fileOf(
  unit: Partial<Unit>,
  parts: readonly Partial<Part>[],
  visits: readonly KeptVisit[],
  appliances: UnitFile["appliances"] = [],
): UnitFile {
  return {
    site: { id: "site", altitudeM: 0 },
    point: { id: "point" },
    unit: {
      id: "unit",
      tankL: 53,
      shutOffRatio: 0.64,
      testPressureKPaGauge: 414,
      testTemperatureC: 25,
      testFeedMgPerL: 500,
      ...unit,
    },
    appliances,
    parts: parts.map((part, i) => ({ id: `part${i}`, unit: "unit", position: i, ...part })),
    instruments: new Map(),
    visits,
    openPoints: [],
    settledPoints: [],
  };
}

const carbon = (fittedOn: string, meterAtFittingM3: number): Partial<Part> => ({
  role: "carbon",
  fittedOn,
  ratedLitres: 57_000,
  ratedChlorineMgPerL: 2,
  meterAtFittingM3,
});

/**
 * Worked visits with readings rounded as a technician reads, computed with an independent model of the same physics: a tenfold
 * clogged filter's little brother (×7) and a charge of 4 psi; an oxidised element behind spent carbon (A ×1.32, B ×4.2); a check valve
 * that leaks back (element sound).
 */
export const ordinaryVisit = (): UnitFile =>
  fileOf(
    { ratedPermeateLPerH: 31.8, ratedRejectLPerH: 60, ratedRejectionPercent: 94.3 },
    [
      { role: "sediment", fittedOn: "2025-11-20" },
      carbon("2025-11-20", 100),
      { role: "element", fittedOn: "2023-11-20" },
    ],
    [
      visit("new", "commissioning", "2023-11-20", {
        feedTemperature: [15, "°C"],
        beforeFilterPressure: [4.3, "bar"],
        feedTds: ppm(214),
        permeateTds: ppm(8),
        permeateFlow: [434, "mL/min"],
        drainFlow: [1006, "mL/min"],
      }),
      visit("lastYear", "annual", "2025-11-20", {
        feedTemperature: [12, "°C"],
        beforeFilterPressure: [4.2, "bar"],
        afterFilterPressure: [4.08, "bar"],
        feedTds: ppm(214),
        permeateTds: ppm(9),
        permeateFlow: [367, "mL/min"],
        drainFlow: [992, "mL/min"],
      }),
      visit("today", "annual", "2026-11-25", {
        deliveredTds: ppm(22, "442"),
        tankFullPressure: [42, "psi"],
        waterMeter: [141, "m³"],
        feedTds: ppm(301, "442"),
        feedTemperature: [13, "°C"],
        chlorineBefore: [0.9, "mg/L"],
        chlorineAfter: nothingSeen,
        staticPressure: [65, "psi"],
        drawnVolume: [8, "L"],
        tankAfterPressure: [24, "psi"],
        beforeFilterPressure: [61, "psi"],
        afterFilterPressure: [51.6, "psi"],
        permeateFlow: cup(0.5, 94),
        drainFlow: cup(1, 65),
        permeateTds: ppm(15, "442"),
      }),
    ],
    [{ id: "oven", name: "combi oven", type: "combiOven", minimumPressureKPaGauge: 137.9, limits: [] }],
  );

export const tasteComplaint = (): UnitFile =>
  fileOf(
    { ratedPermeateLPerH: 22.8, ratedRejectLPerH: 45, ratedRejectionPercent: 94.6 },
    [carbon("2025-10-26", 200), { role: "element", fittedOn: "2024-10-20" }],
    [
      visit("new", "commissioning", "2024-10-20", {
        feedTemperature: [18, "°C"],
        beforeFilterPressure: [4.5, "bar"],
        feedTds: ppm(320),
        permeateTds: ppm(13),
        permeateFlow: [349, "mL/min"],
        drainFlow: [775, "mL/min"],
      }),
      visit("lastYear", "annual", "2025-10-26", {
        feedTemperature: [17, "°C"],
        beforeFilterPressure: [4.4, "bar"],
        feedTds: ppm(325),
        permeateTds: ppm(14),
        permeateFlow: [321, "mL/min"],
        drainFlow: [760, "mL/min"],
        chlorineAfter: nothingSeen,
      }),
      visit(
        "today",
        "callOut",
        "2026-11-25",
        {
          chlorineBefore: [2, "mg/L"],
          chlorineAfter: [0.9, "mg/L"],
          waterMeter: [326, "m³"],
          feedTemperature: [20, "°C"],
          beforeFilterPressure: [4.4, "bar"],
          afterFilterPressure: [4.22, "bar"],
          feedTds: ppm(330),
          permeateTds: ppm(44),
          deliveredTds: ppm(61),
          permeateFlow: cup(0.5, 64),
          drainFlow: cup(1, 79),
        },
        { "cause.complaint": "taste", "cause.throttledFlow": 13.2, "cause.throttledTds": 77 },
      ),
    ],
  );

export const drainAllNight = (): UnitFile =>
  fileOf(
    { ratedPermeateLPerH: 17.9, ratedRejectLPerH: 35, ratedRejectionPercent: 95.1 },
    [carbon("2026-01-10", 10), { role: "element", fittedOn: "2025-06-01" }],
    [
      visit("new", "commissioning", "2025-06-01", {
        feedTemperature: [19, "°C"],
        beforeFilterPressure: [4.1, "bar"],
        feedTds: ppm(260),
        permeateTds: ppm(10),
        permeateFlow: [261, "mL/min"],
        drainFlow: [577, "mL/min"],
        airCharge: [9, "psi"],
      }),
      visit(
        "today",
        "callOut",
        "2026-11-25",
        {
          deliveredTds: ppm(28),
          permeateTds: ppm(13),
          feedTds: ppm(265),
          feedTemperature: [21, "°C"],
          beforeFilterPressure: [4.0, "bar"],
          afterFilterPressure: [3.89, "bar"],
          permeateFlow: cup(0.5, 118),
          drainFlow: cup(1, 106),
          chlorineAfter: nothingSeen,
          waterMeter: [62, "m³"],
          tankFullPressure: [37, "psi"],
          drainFlowFeedClosed: cup(0.5, 190),
        },
        { "cause.complaint": "drainRuns" },
      ),
    ],
  );
