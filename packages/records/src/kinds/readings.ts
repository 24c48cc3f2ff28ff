/** The scale a dissolved-solids meter shows. */
export type TdsScale = "NaCl" | "KCl" | "442";

/** A place on the line of water where something is read. Plain ids; a unit may lack any of them. */
export type PortId =
  | "feed"
  | "beforeFilter"
  | "afterFilter"
  | "drain"
  | "permeateToWaste"
  | "tank"
  | "delivered"
  | "meter"
  | "hourMeter"
  | "bottle";

export type Phase = "asFound" | "asLeft";

/** What is read. Each slot has one quantity; `SLOTS` in `slots.ts` says which. */
export type SlotId =
  | "feedTds"
  | "feedTemperature"
  | "chlorineBefore"
  | "chlorineAfter"
  | "staticPressure"
  | "beforeFilterPressure"
  | "afterFilterPressure"
  | "permeateFlow"
  | "drainFlow"
  | "permeateTds"
  | "deliveredTds"
  | "tankFullPressure"
  | "drawnVolume"
  | "tankAfterPressure"
  | "airCharge"
  | "waterMeter"
  | "hardness"
  | FurtherSlotId;

/** Read only when wanted: never asked by the ordinary visit. */
export type FurtherSlotId =
  | "firstDrawTds"
  | "standardSolution"
  | "drainTds"
  | "drainFlowFeedClosed"
  | "drainFlowTankFull"
  | "postFilterPressure"
  | "deliveredFlow"
  | "chlorineFreeBefore"
  | "chlorineFreeAfter"
  | "deliveredChlorine"
  | "deliveredHardness"
  | "deliveredAlkalinity"
  | "deliveredChloride"
  | "deliveredSilica"
  | "deliveredPh"
  | "feedAlkalinity"
  | "feedChloride"
  | "feedSilica"
  | "feedPh"
  | "chloramine"
  | "peakPressure"
  | "nightPressure"
  | "drainGap"
  | "drainHeight"
  | "hourCounter";

/** One atomic register: a reading with everything needed to judge it later. */
export interface Reading {
  /** Exactly as typed. */
  readonly raw: string;
  /** Parsed; null while only a photo exists. */
  readonly value: number | null;
  /** Unit symbol of the trade: "psi", "ppm", "°C", "s", "mL/min", "L", "m³", "mg/L", "gpg" … */
  readonly unit: string;
  /** For dissolved solids. */
  readonly scale?: TdsScale;
  /** For flows timed with a cup: `value` is seconds for this volume. */
  readonly volumeL?: number;
  /** True when the test showed nothing; `value` is then the detection step. */
  readonly notDetected?: boolean;
  readonly instrument?: string;
  readonly port: PortId;
  /** ISO 8601 with offset. */
  readonly at: string;
  readonly photo?: string;
  /** The technician does not trust it; kept, not used. */
  readonly doubtful?: boolean;
}
