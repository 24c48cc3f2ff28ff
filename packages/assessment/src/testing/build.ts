import type {
  Kept,
  KeptVisit,
  Part,
  Phase,
  Reading,
  SlotId,
  TdsScale,
  Unit,
  UnitFile,
  VisitKind,
} from "@tapside/records";
import { SLOTS } from "@tapside/records";

export type Typed = readonly [value: number, unit: string, more?: Partial<Reading>];
export type TypedReadings = Readonly<Partial<Record<SlotId, Typed>>>;

export const ppm = (value: number, scale: TdsScale = "NaCl", instrument?: string): Typed => [
  value,
  "ppm",
  { scale, ...(instrument && { instrument }) },
];
export const cup = (litres: number, seconds: number): Typed => [seconds, "s", { volumeL: litres }];
export const nothingSeen = (step: number): Typed => [step, "mg/L", { notDetected: true }];

const readingsOf = (typed: TypedReadings, at: string): KeptVisit["readings"][Phase] =>
  Object.fromEntries(
    Object.entries(typed).map(([slot, [value, unit, more]]) => [
      slot,
      { raw: String(value), value, unit, port: SLOTS[slot as SlotId].port, at, ...more },
    ]),
  );

export function visitOf(
  id: string,
  kind: VisitKind,
  day: string,
  asFound: TypedReadings,
  more: Partial<KeptVisit> & { readonly asLeftTyped?: TypedReadings } = {},
): KeptVisit {
  const { asLeftTyped, ...rest } = more;
  const at = `${day}T06:30:00+00:00`;
  return {
    id,
    kind,
    unit: "unit",
    point: "point",
    startedAt: at,
    readings: { asFound: readingsOf(asFound, at), asLeft: readingsOf(asLeftTyped ?? {}, at) },
    answers: {},
    exceptions: {},
    work: {},
    photos: {},
    skipped: [],
    ...rest,
  };
}

export function fileOf(
  name: string,
  unit: Partial<Unit>,
  parts: readonly Partial<Kept<Part>>[],
  visits: readonly KeptVisit[],
  appliances: UnitFile["appliances"] = [],
): UnitFile {
  return {
    site: { id: "site", name, altitudeM: 0 },
    point: { id: "point", site: "site", name: "kitchen" },
    unit: { id: "unit", point: "point", name: "unit 1", tankL: 53, shutOffRatio: 0.64, ...unit },
    appliances,
    parts: parts.map((part, i) => ({ id: `part${i}`, unit: "unit", position: i, ...part })),
    instruments: new Map(),
    visits,
    openPoints: [],
    settledPoints: [],
  };
}

export const context = { asOf: "2026-11-25T08:00:00Z", timeZone: "UTC", settings: {} } as const;

const plate = { testPressureKPaGauge: 414, testTemperatureC: 25, testFeedMgPerL: 500 } as const;

/** Three nameplates at 4.14 bar, 25 °C, 500 mg/L sodium chloride. */
export const N1: Partial<Unit> = {
  ...plate,
  ratedPermeateLPerH: 31.8,
  ratedRejectLPerH: 60,
  ratedRejectionPercent: 94.3,
};
export const N2: Partial<Unit> = {
  ...plate,
  ratedPermeateLPerH: 22.8,
  ratedRejectLPerH: 45,
  ratedRejectionPercent: 94.6,
};
export const N3: Partial<Unit> = {
  ...plate,
  ratedPermeateLPerH: 17.9,
  ratedRejectLPerH: 35,
  ratedRejectionPercent: 95.1,
};
