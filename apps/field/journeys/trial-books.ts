import type { FieldValue, SlotId } from "@tapside/records";
import { bookText, type KeptRecord } from "../../../packages/records/src/testing/book-text.ts";

type Typed = readonly [value: number, unit: string, more?: Readonly<Record<string, FieldValue>>];
type Fields = Readonly<Record<string, FieldValue>>;

const daysAgo = (days: number) => new Date(Date.now() - days * 86_400_000).toISOString();

interface Trial {
  readonly site: string;
  readonly plate: readonly [permeateLPerH: number, rejectLPerH: number, rejectionPercent: number];
  readonly carbon: { readonly daysAgo: number; readonly meterM3: number };
  readonly elementDaysAgo: number;
  readonly visits: readonly {
    readonly kind: string;
    readonly daysAgo: number;
    readonly read: Readonly<Partial<Record<SlotId, Typed>>>;
  }[];
}

/** The book of a computed trial up to the day of the visit. Nameplates at 4.14 bar, 25 °C, 500 mg/L of sodium chloride. */
function bookOfTrial(trial: Trial): string {
  const [ratedPermeateLPerH, ratedRejectLPerH, ratedRejectionPercent] = trial.plate;
  return bookText([
    ["settings", "settings", { technician: "J. Orme" }],
    ["site", "site", { name: trial.site, altitudeM: 0, askName: "R. Hale", askRole: "kitchen lead" }],
    ["point", "point", { site: "site", name: "Back room" }],
    [
      "unit",
      "unit",
      {
        point: "point",
        name: "Unit 1",
        ratedPermeateLPerH,
        ratedRejectLPerH,
        ratedRejectionPercent,
        testPressureKPaGauge: 414,
        testTemperatureC: 25,
        testFeedMgPerL: 500,
        tankL: 53,
        shutOffRatio: 0.64,
      },
    ],
    [
      "part",
      "carbon",
      {
        unit: "unit",
        role: "carbon",
        position: 1,
        fittedOn: daysAgo(trial.carbon.daysAgo).slice(0, 10),
        ratedLitres: 57_000,
        ratedChlorineMgPerL: 2,
        meterAtFittingM3: trial.carbon.meterM3,
      },
    ],
    [
      "part",
      "element",
      {
        unit: "unit",
        role: "element",
        position: 2,
        fittedOn: daysAgo(trial.elementDaysAgo).slice(0, 10),
      },
    ],
    [
      "instrument",
      "meter",
      {
        name: "Meter 7",
        kind: "tds",
        unit: "ppm",
        scale: "NaCl",
        accuracyPercentOfReading: 2,
        resolution: 1,
      },
    ],
    ...trial.visits.map(visitRecord),
  ]);
}

function visitRecord(visit: Trial["visits"][number], i: number): KeptRecord {
  const at = daysAgo(visit.daysAgo);
  const readings = Object.entries(visit.read).map(([slot, [value, unit, more]]): [string, Fields] => [
    `reading:asFound:${slot}`,
    { raw: String(value), value, unit, at, ...(unit === "ppm" && { scale: "NaCl" }), ...more },
  ]);
  return [
    "visit",
    `earlier${i}`,
    {
      unit: "unit",
      point: "point",
      kind: visit.kind,
      startedAt: at,
      endedAt: at,
      closed: true,
      ...Object.fromEntries(readings),
    },
  ];
}

/** Trial of a taste complaint: carbon long spent, element oxidised. Numbers: computed with an independent model. */
export const tasteComplaintBook = () =>
  bookOfTrial({
    site: "Dabchick Road youth kitchen",
    plate: [22.8, 45, 94.6],
    carbon: { daysAgo: 395, meterM3: 200 },
    elementDaysAgo: 766,
    visits: [
      {
        kind: "commissioning",
        daysAgo: 766,
        read: {
          feedTemperature: [18, "°C"],
          beforeFilterPressure: [4.5, "bar"],
          feedTds: [320, "ppm"],
          permeateTds: [13, "ppm"],
          permeateFlow: [349, "mL/min"],
          drainFlow: [775, "mL/min"],
        },
      },
      {
        kind: "annual",
        daysAgo: 395,
        read: {
          feedTemperature: [17, "°C"],
          beforeFilterPressure: [4.4, "bar"],
          feedTds: [325, "ppm"],
          permeateTds: [14, "ppm"],
          permeateFlow: [321, "mL/min"],
          drainFlow: [760, "mL/min"],
          chlorineAfter: [0.1, "mg/L", { notDetected: true }],
        },
      },
    ],
  });

/** Trial of a drain heard all night: the check valve leaks back. Numbers: computed with an independent model. */
export const drainAllNightBook = () =>
  bookOfTrial({
    site: "Weir Street canteen",
    plate: [17.9, 35, 95.1],
    carbon: { daysAgo: 319, meterM3: 10 },
    elementDaysAgo: 542,
    visits: [
      {
        kind: "commissioning",
        daysAgo: 542,
        read: {
          feedTemperature: [19, "°C"],
          beforeFilterPressure: [4.1, "bar"],
          feedTds: [260, "ppm"],
          permeateTds: [10, "ppm"],
          permeateFlow: [261, "mL/min"],
          drainFlow: [577, "mL/min"],
        },
      },
    ],
  });
