import type { TdsScale } from "./readings.ts";

/** One reading of a known standard in the morning: it covers the readings of that instrument on that day. */
export interface MeterCheck {
  readonly instrument: string;
  /** ISO 8601 instant. */
  readonly at: string;
  readonly standard: number;
  readonly read: number;
  readonly unit: string;
}

/** "kit": drops, strips or a photometer for what is dissolved. */
export type InstrumentKind =
  | "tds"
  | "pressure"
  | "temperature"
  | "flow"
  | "chlorine"
  | "hardness"
  | "kit"
  | "pH"
  | "meter"
  | "length";

export interface Instrument {
  readonly name: string;
  readonly kind: InstrumentKind;
  readonly unit: string;
  readonly scale?: TdsScale;
  readonly accuracyPercentOfReading?: number;
  readonly accuracyPercentOfFullScale?: number;
  readonly fullScale?: number;
  readonly resolution?: number;
  readonly lastCheckedOn?: string;
  /** The one taken up first for its kind. */
  readonly usual?: boolean;
}

/** What a sensor wrote by itself, taken in from its file as one record. */
export interface SensorLog {
  readonly unit: string;
  readonly name: string;
  readonly takenOn: string;
  readonly lines?: readonly SensorLine[];
}

export interface SensorLine {
  /** ISO 8601 instant. */
  readonly at: string;
  readonly value?: number;
  readonly unit?: string;
  /** The text of an alarm. */
  readonly alarm?: string;
}
