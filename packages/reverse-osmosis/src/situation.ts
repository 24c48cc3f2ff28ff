import type { Conditions, Unit } from "./unit.ts";

/** A unit, its water, its use and how it is read, all together: what a fault changes. */
export interface Situation {
  readonly unit: Unit;
  readonly conditions: Conditions;
  /** With nothing flowing; the shut-off then closes against this. */
  readonly staticFeedKPaGauge?: number;
  readonly feedChlorineMgPerL?: number;
  readonly feedHardnessMgPerLCaCO3?: number;
  /** By the water meter or by asking. */
  readonly usedLPerDay?: number;
  /** Of the dissolved-solids meter; 1 = right. */
  readonly solidsGain?: number;
  /** Of the pressure gauge; 1 = right. */
  readonly gaugeGain?: number;
  /** First water over running water; 1 = sampled after flushing. */
  readonly firstWaterFactor?: number;
}
