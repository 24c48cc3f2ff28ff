import type { Appliance, ApplianceModel, Limit } from "./kinds/appliances.ts";
import type { Instrument, MeterCheck, SensorLog } from "./kinds/instruments.ts";
import type { InstallationPoint, Move, Ownership, Plan, Site } from "./kinds/places.ts";
import type { CauseCounts, Settings } from "./kinds/settings.ts";
import type { Part, Unit } from "./kinds/units.ts";
import type { VanEntry } from "./kinds/van.ts";
import type { Visit } from "./kinds/visits.ts";
import type { WaterAnalysisEntry } from "./kinds/water-analyses.ts";
import type { OpenPoint, ServiceRecordEntry } from "./kinds/what-stays.ts";

export * from "./kinds/appliances.ts";
export * from "./kinds/instruments.ts";
export * from "./kinds/places.ts";
export * from "./kinds/readings.ts";
export * from "./kinds/settings.ts";
export * from "./kinds/units.ts";
export * from "./kinds/van.ts";
export * from "./kinds/visits.ts";
export * from "./kinds/water-analyses.ts";
export * from "./kinds/what-stays.ts";

/** Every kind of record that is kept, by its id. */
export interface Kinds {
  readonly site: Site;
  readonly appliance: Appliance;
  readonly limit: Limit;
  readonly waterAnalysis: WaterAnalysisEntry;
  readonly point: InstallationPoint;
  readonly unit: Unit;
  readonly part: Part;
  readonly instrument: Instrument;
  readonly visit: Visit;
  readonly openPoint: OpenPoint;
  readonly serviceRecord: ServiceRecordEntry;
  readonly settings: Settings;
  readonly ownership: Ownership;
  readonly model: ApplianceModel;
  readonly move: Move;
  readonly plan: Plan;
  readonly meterCheck: MeterCheck;
  readonly causeCounts: CauseCounts;
  readonly vanEntry: VanEntry;
  readonly sensorLog: SensorLog;
}

export type KindId = keyof Kinds;
