import type { TdsScale } from "./readings.ts";

export type ApplianceType = "combiOven" | "steamer" | "coffee" | "ice" | "dishwasher" | "dispenser" | "other";

export interface Appliance {
  readonly site: string;
  readonly point: string;
  readonly name: string;
  readonly type: ApplianceType;
  readonly minimumPressureKPaGauge?: number;
  /** Hottest temperature its water meets; wetted steel and copper as the manual says. */
  readonly hottestC?: number;
  readonly steelGrade?: "304" | "316";
  readonly copperOrBrass?: boolean;
  /** What its own counter counts, where it has one: hours of running, or litres. */
  readonly counter?: "h" | "L";
  /** What it takes on a busy day, L, as the kitchen tells it, and between which times of the day ("06:30"). */
  readonly litresPerDay?: number;
  readonly usedFrom?: string;
  readonly usedUntil?: string;
  /** An appliance type of the book, whose limits count for this one too. */
  readonly model?: string;
}

/** A type of appliance: its limits and minimum pressure are set once, with source and date, and count for all of its kind. */
export interface ApplianceModel {
  readonly name: string;
  readonly type: ApplianceType;
  readonly minimumPressureKPaGauge?: number;
  readonly source?: string;
  readonly sourceDate?: string;
}

export type LimitQuantity = "tds" | "hardness" | "alkalinity" | "chloride" | "chlorine" | "silica" | "pH";

/** One limit from an appliance's label; a child record of the appliance, or of an appliance type. */
export interface Limit {
  readonly appliance: string;
  readonly quantity: LimitQuantity;
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
  readonly scale?: TdsScale;
  readonly source: string;
  readonly sourceDate?: string;
}
