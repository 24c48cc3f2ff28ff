import type { SlotId } from "@tapside/records";
import type { SignId } from "./signs.ts";

/** Which slot of the visit shows a sign as it is read. */
export const SLOT_OF_SIGN: Readonly<Partial<Record<SignId, SlotId>>> = {
  feedTds: "feedTds",
  temperature: "feedTemperature",
  chlorineBefore: "chlorineBefore",
  chlorineAfter: "chlorineAfter",
  staticPressure: "staticPressure",
  beforeFilterPressure: "beforeFilterPressure",
  afterFilterPressure: "afterFilterPressure",
  permeateFlow: "permeateFlow",
  drainFlow: "drainFlow",
  permeateTds: "permeateTds",
  deliveredTds: "deliveredTds",
  tankFullPressure: "tankFullPressure",
  airCharge: "airCharge",
  hardness: "hardness",
  firstDrawTds: "firstDrawTds",
  drainFeedClosedFlow: "drainFlowFeedClosed",
  drainTankFullFlow: "drainFlowTankFull",
  outletFlow: "deliveredFlow",
};

/** Where a sign is typed in: its own slot, or the last reading it is worked out from. */
export const slotToRead = (sign: SignId): SlotId | undefined =>
  sign === "gasL" ? "tankAfterPressure" : SLOT_OF_SIGN[sign];
