import {
  type Accuracy,
  convert,
  instrumentUncertainty,
  known,
  missing,
  type Outcome,
  type Uncertain,
} from "@tapside/quantities";
import type { Instrument, Kept, Reading, SlotId, TdsScale, UnitFile } from "@tapside/records";
import { finite } from "./finite.ts";
import { convertTds, type SolidsColumn } from "./tds-scale.ts";

type Kind =
  | "pressure"
  | "temperature"
  | "flow"
  | "volume"
  | "solids"
  | "chlorine"
  | "hardness"
  | "dissolved"
  | "pH"
  | "meter"
  | "length"
  | "time";

/** What each slot is inside: its kind, coherent unit, and the accuracy assumed when no instrument is named. */
const KINDS: Readonly<
  Record<Kind, { readonly unit: string; readonly usualUnit: string; readonly usual: Accuracy }>
> = {
  pressure: {
    unit: "kPa",
    usualUnit: "psi",
    usual: { percentOfFullScale: 1, fullScale: 100, resolution: 1 },
  },
  temperature: {
    unit: "°C",
    usualUnit: "°C",
    usual: { percentOfFullScale: 1, fullScale: 50, resolution: 0.1 },
  },
  flow: { unit: "L/h", usualUnit: "L/h", usual: { percentOfReading: 3 } },
  volume: { unit: "L", usualUnit: "L", usual: { percentOfReading: 2, resolution: 0.1 } },
  solids: { unit: "mg/L", usualUnit: "ppm", usual: { percentOfReading: 2, resolution: 1 } },
  chlorine: { unit: "mg/L", usualUnit: "mg/L", usual: { percentOfReading: 15, resolution: 0.1 } },
  hardness: { unit: "mg/L CaCO3", usualUnit: "gpg", usual: { resolution: 1 } },
  dissolved: { unit: "mg/L", usualUnit: "mg/L", usual: { percentOfReading: 10, resolution: 1 } },
  pH: { unit: "pH", usualUnit: "pH", usual: { percentOfFullScale: 1, fullScale: 14, resolution: 0.1 } },
  meter: { unit: "m³", usualUnit: "m³", usual: { percentOfReading: 0, resolution: 0.01 } },
  length: { unit: "mm", usualUnit: "mm", usual: { resolution: 5 } },
  time: { unit: "h", usualUnit: "h", usual: { resolution: 1 } },
};

const SLOT_KIND: Readonly<Record<SlotId, Kind>> = {
  feedTds: "solids",
  feedTemperature: "temperature",
  chlorineBefore: "chlorine",
  chlorineAfter: "chlorine",
  staticPressure: "pressure",
  beforeFilterPressure: "pressure",
  afterFilterPressure: "pressure",
  permeateFlow: "flow",
  drainFlow: "flow",
  permeateTds: "solids",
  deliveredTds: "solids",
  tankFullPressure: "pressure",
  drawnVolume: "volume",
  tankAfterPressure: "pressure",
  airCharge: "pressure",
  waterMeter: "meter",
  hardness: "hardness",
  firstDrawTds: "solids",
  standardSolution: "solids",
  drainTds: "solids",
  drainFlowFeedClosed: "flow",
  drainFlowTankFull: "flow",
  postFilterPressure: "pressure",
  deliveredFlow: "flow",
  chlorineFreeBefore: "chlorine",
  chlorineFreeAfter: "chlorine",
  deliveredChlorine: "chlorine",
  deliveredHardness: "hardness",
  deliveredAlkalinity: "hardness",
  deliveredChloride: "dissolved",
  deliveredSilica: "dissolved",
  deliveredPh: "pH",
  feedAlkalinity: "hardness",
  feedChloride: "dissolved",
  feedSilica: "dissolved",
  feedPh: "pH",
  chloramine: "chlorine",
  peakPressure: "pressure",
  nightPressure: "pressure",
  drainGap: "length",
  drainHeight: "length",
  hourCounter: "time",
};

/** The readings of one phase, with the instruments that took them. */
export type PhaseReadings = Readonly<Partial<Record<SlotId, Reading>>>;

const accuracyOf = (instrument: Kept<Instrument>): Accuracy => ({
  ...(instrument.accuracyPercentOfReading !== undefined && {
    percentOfReading: instrument.accuracyPercentOfReading,
  }),
  ...(instrument.accuracyPercentOfFullScale !== undefined && {
    percentOfFullScale: instrument.accuracyPercentOfFullScale,
  }),
  ...(instrument.fullScale !== undefined && { fullScale: instrument.fullScale }),
  ...(instrument.resolution !== undefined && { resolution: instrument.resolution }),
});

const statesAccuracy = (instrument: Kept<Instrument> | undefined) =>
  instrument !== undefined &&
  [instrument.accuracyPercentOfReading, instrument.accuracyPercentOfFullScale, instrument.resolution].some(
    (one) => one !== undefined && one > 0,
  );

/** Accuracy of the reading's instrument as its record states it, else the usual one of its kind, in the reading's unit. */
export function readingAccuracy(
  slot: SlotId,
  reading: Reading,
  file: Pick<UnitFile, "instruments">,
): Accuracy {
  const instrument = reading.instrument ? file.instruments.get(reading.instrument) : undefined;
  if (statesAccuracy(instrument)) return accuracyOf(instrument!);
  const { usual, usualUnit } = KINDS[SLOT_KIND[slot]];
  const one = usualUnit === reading.unit ? 1 : spanIn(1, usualUnit, reading.unit);
  return {
    ...usual,
    ...(usual.fullScale !== undefined && { fullScale: usual.fullScale * one }),
    ...(usual.resolution !== undefined && { resolution: usual.resolution * one }),
  };
}

/** A difference (not a point) in another unit. */
function spanIn(span: number, from: string, to: string): number {
  const high = convert(span, from, to);
  const low = convert(0, from, to);
  return high.kind === "known" && low.kind === "known" ? Math.abs(high.value - low.value) : span;
}

export const scaleOf = (reading: Reading, file: Pick<UnitFile, "instruments">): TdsScale =>
  reading.scale ?? file.instruments.get(reading.instrument ?? "")?.scale ?? "NaCl";

/** A usable reading: trusted, with a finite number. */
export const usable = (reading: Reading | undefined): reading is Reading & { readonly value: number } =>
  reading !== undefined &&
  reading.doubtful !== true &&
  typeof reading.value === "number" &&
  Number.isFinite(reading.value);

/** One reading in coherent units (kPa gauge, °C, L/h, L, mg/L as sodium chloride, m³) with its standard uncertainty. */
export const amountOf = (
  slot: SlotId,
  readings: PhaseReadings,
  file: Pick<UnitFile, "instruments">,
): Outcome<Uncertain> => finite(amount(slot, readings, file));

function amount(
  slot: SlotId,
  readings: PhaseReadings,
  file: Pick<UnitFile, "instruments">,
): Outcome<Uncertain> {
  const reading = readings[slot];
  if (!usable(reading)) return missing(slot);
  if (reading.notDetected)
    return known({ value: reading.value / 2, u: Math.abs(reading.value) / Math.sqrt(12) });
  if (reading.volumeL !== undefined && SLOT_KIND[slot] === "flow")
    return timedFlow(slot, reading.value, reading.volumeL);
  const { u } = instrumentUncertainty(reading.value, readingAccuracy(slot, reading, file));
  const kind = SLOT_KIND[slot];
  if (kind === "solids") return solids(reading.value, u, columnOf(reading, file));
  if (kind === "pH") return known({ value: reading.value, u });
  return inUnit({ value: reading.value, u }, reading.unit, KINDS[kind].unit);
}

const columnOf = (reading: Reading, file: Pick<UnitFile, "instruments">): SolidsColumn =>
  reading.unit === "µS/cm" || reading.unit === "uS/cm" ? "EC" : scaleOf(reading, file);

function solids(value: number, u: number, column: SolidsColumn): Outcome<Uncertain> {
  const nacl = convertTds(value, column, "NaCl");
  return known({ value: nacl, u: value > 0 ? (u * nacl) / value : u });
}

export const CUP_RELATIVE = 0.01;
const CUP_AT_MOST_L = 0.01;
export const STOPWATCH_S = 0.4;

/** Flow from a cup and a stopwatch, L/h: u(V) 1 % up to 10 mL, u(t) 0.4 s. */
function timedFlow(slot: SlotId, seconds: number, volumeL: number): Outcome<Uncertain> {
  if (!(seconds > 0 && volumeL > 0)) return missing(slot);
  const value = (3600 * volumeL) / seconds;
  const cup = Math.min(CUP_RELATIVE * volumeL, CUP_AT_MOST_L) / volumeL;
  return known({ value, u: value * Math.hypot(cup, STOPWATCH_S / seconds) });
}

/** A value with uncertainty in another unit of its kind. */
export function inUnit(measured: Uncertain, from: string, to: string): Outcome<Uncertain> {
  const value = convert(measured.value, from, to);
  if (value.kind !== "known") return value;
  return known({ value: value.value, u: spanIn(measured.u, from, to) });
}
