/** Settings of the company or technician: one record with id "settings". */
export interface Settings {
  readonly technician?: string;
  /** Where a kitchen rings. */
  readonly phone?: string;
  readonly pressureUnit?: "psi" | "bar" | "kPa";
  readonly temperatureUnit?: "°C" | "°F";
  readonly decimalSign?: "." | ",";
  readonly leftHand?: boolean;
  readonly temperatureForm?: string;
  readonly shutOffRatio?: number;
  readonly filterDropLimitKPa?: number;
  readonly flowRatioLimit?: number;
  readonly saltRatioLimit?: number;
}

/** How often the company found each cause, as counted up to a day: one record a version, the newest counts. */
export interface CauseCounts {
  readonly version: number;
  /** ISO date. */
  readonly asOf: string;
  /** By cause. */
  readonly found: Readonly<Record<string, number>>;
  /** How many found causes the assumed frequencies are worth. */
  readonly assumedWorth: number;
}
