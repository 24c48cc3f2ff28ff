import type { CauseId } from "./causes.ts";
import type { TestId } from "./test-catalogue.ts";

/** What has to be carried; plain ids for words. */
export type PartId =
  | "element"
  | "preFilter"
  | "carbon"
  | "postFilter"
  | "oRing"
  | "brineSeal"
  | "restrictor"
  | "drainTube"
  | "shutOffValve"
  | "checkValve"
  | "tank"
  | "bypassValve"
  | "tube"
  | "booster"
  | "softenerSalt"
  | "handPump"
  | "tdsStandard"
  | "gauge";

/** What can hurt or spoil; plain ids for words. */
export type CautionId =
  | "pressureToZero"
  | "appliancesHeld"
  | "tankHeavy"
  | "handPumpOnly"
  | "platePressure"
  | "electricityOff"
  | "rinseNewCarbon"
  | "rinseNewElement"
  | "sanitise"
  | "discardTanks"
  | "backflow"
  | "drainGap"
  | "makersInstructions";

export interface Repair {
  readonly parts: readonly PartId[];
  readonly minutes: number;
  readonly cautions: readonly CautionId[];
  /** Causes that, if they are at work too, spoil this repair unless they are put right before it. */
  readonly afterRepairing: readonly CauseId[];
  readonly measureAgain: readonly TestId[];
  /** Parts or labour dear enough to want 95 in 100 before it is done. */
  readonly dear?: true;
}

const housing: readonly CautionId[] = ["appliancesHeld", "pressureToZero"];
const flows: readonly TestId[] = ["permeateFlow", "drainFlow"];
const newElement = (
  more: readonly CautionId[] = [],
): Pick<Repair, "parts" | "minutes" | "cautions" | "dear"> => ({
  parts: ["element"],
  minutes: 20,
  cautions: [...housing, "sanitise", "rinseNewElement", "discardTanks", ...more],
  dear: true,
});

/** Minutes and parts: assumed, common practice, no source. */
export const REPAIRS: Readonly<Record<CauseId, Repair>> = {
  healthy: { parts: [], minutes: 0, cautions: [], afterRepairing: [], measureAgain: [] },
  fouledMembrane: {
    ...newElement(),
    afterRepairing: ["preFilterClogged", "carbonExhausted", "softenerFailed"],
    measureAgain: [...flows, "permeateTds"],
  },
  scaledMembrane: {
    ...newElement(),
    afterRepairing: ["softenerFailed", "restrictorBlocked", "drainLineBlocked", "carbonExhausted"],
    measureAgain: [...flows, "permeateTds", "hardness"],
  },
  oxidisedMembrane: {
    ...newElement(),
    afterRepairing: ["carbonExhausted", "softenerFailed"],
    measureAgain: ["chlorineAfter", ...flows, "permeateTds"],
  },
  sealLeak: {
    parts: ["oRing"],
    minutes: 15,
    cautions: [...housing, "sanitise"],
    afterRepairing: [],
    measureAgain: ["permeateTds", "permeateFlow"],
  },
  brineSeal: {
    parts: ["brineSeal"],
    minutes: 15,
    cautions: [...housing, "sanitise"],
    afterRepairing: [],
    measureAgain: [...flows, "permeateTds"],
  },
  restrictorBlocked: {
    parts: ["restrictor"],
    minutes: 10,
    cautions: housing,
    afterRepairing: ["softenerFailed"],
    measureAgain: [...flows, "permeateTds"],
  },
  drainLineBlocked: {
    parts: ["drainTube"],
    minutes: 10,
    cautions: ["drainGap", "backflow"],
    afterRepairing: [],
    measureAgain: ["drainFlow", "permeateTds"],
  },
  restrictorTooBig: {
    parts: ["restrictor"],
    minutes: 10,
    cautions: housing,
    afterRepairing: [],
    measureAgain: [...flows, "permeateTds"],
  },
  preFilterClogged: {
    parts: ["preFilter"],
    minutes: 8,
    cautions: [...housing, "rinseNewCarbon"],
    afterRepairing: [],
    measureAgain: ["afterFilterPressure", "permeateFlow"],
  },
  shutOffSticking: {
    parts: ["shutOffValve"],
    minutes: 15,
    cautions: housing,
    afterRepairing: ["preFilterClogged"],
    measureAgain: [...flows, "drainTankFull"],
  },
  lowFeedPressure: {
    parts: [],
    minutes: 15,
    cautions: ["platePressure", "backflow"],
    afterRepairing: ["gaugeOff"],
    measureAgain: ["staticPressure", "beforeFilterPressure", "permeateFlow"],
  },
  coldWater: { parts: [], minutes: 5, cautions: [], afterRepairing: [], measureAgain: [] },
  airChargeLow: {
    parts: ["handPump"],
    minutes: 5,
    cautions: ["handPumpOnly", "platePressure", "tankHeavy"],
    afterRepairing: [],
    measureAgain: ["airCharge", "drawOff"],
  },
  airChargeHigh: {
    parts: [],
    minutes: 5,
    cautions: ["platePressure"],
    afterRepairing: [],
    measureAgain: ["airCharge", "drawOff"],
  },
  diaphragmRuptured: {
    parts: ["tank"],
    minutes: 20,
    cautions: ["appliancesHeld", "tankHeavy", "handPumpOnly", "sanitise", "discardTanks"],
    afterRepairing: [],
    measureAgain: ["airCharge", "drawOff"],
    dear: true,
  },
  tankValveClosed: {
    parts: [],
    minutes: 0.5,
    cautions: ["discardTanks"],
    afterRepairing: [],
    measureAgain: ["outletFlow"],
  },
  checkValveFailed: {
    parts: ["checkValve"],
    minutes: 10,
    cautions: housing,
    afterRepairing: [],
    measureAgain: ["drainFeedClosed", "drainTankFull", "permeateTds", "deliveredTds"],
  },
  shutOffStuckOpen: {
    parts: ["shutOffValve"],
    minutes: 15,
    cautions: housing,
    afterRepairing: ["checkValveFailed"],
    measureAgain: ["drainTankFull", "tankFullPressure"],
  },
  bypassOpen: {
    parts: ["bypassValve"],
    minutes: 10,
    cautions: ["backflow", "discardTanks"],
    afterRepairing: [],
    measureAgain: ["deliveredTds"],
  },
  tdsMeterOff: {
    parts: ["tdsStandard"],
    minutes: 5,
    cautions: [],
    afterRepairing: [],
    measureAgain: ["tdsStandard", "feedTds", "permeateTds"],
  },
  sampleAfterStandby: {
    parts: [],
    minutes: 0,
    cautions: ["discardTanks"],
    afterRepairing: [],
    measureAgain: ["flushedTds"],
  },
  tubingReversed: {
    parts: ["tube"],
    minutes: 5,
    cautions: ["pressureToZero", "discardTanks"],
    afterRepairing: [],
    measureAgain: [...flows, "permeateTds"],
  },
  carbonExhausted: {
    parts: ["carbon"],
    minutes: 8,
    cautions: [...housing, "rinseNewCarbon"],
    afterRepairing: [],
    measureAgain: ["chlorineAfter"],
  },
  softenerFailed: {
    parts: ["softenerSalt"],
    minutes: 20,
    cautions: ["makersInstructions"],
    afterRepairing: [],
    measureAgain: ["hardness"],
  },
  feedSolidsChanged: { parts: [], minutes: 5, cautions: [], afterRepairing: [], measureAgain: ["feedTds"] },
  postFilterClogged: {
    parts: ["postFilter"],
    minutes: 8,
    cautions: ["appliancesHeld", "pressureToZero", "rinseNewCarbon"],
    afterRepairing: [],
    measureAgain: ["outletFlow"],
  },
  boosterWeak: {
    parts: ["booster"],
    minutes: 30,
    cautions: ["electricityOff", "pressureToZero", "makersInstructions"],
    afterRepairing: ["preFilterClogged"],
    measureAgain: ["elementPressure", "permeateFlow"],
    dear: true,
  },
  kinkedLine: {
    parts: ["tube"],
    minutes: 5,
    cautions: ["pressureToZero"],
    afterRepairing: [],
    measureAgain: ["permeateFlow", "outletFlow"],
  },
  demandAboveCapacity: {
    parts: [],
    minutes: 10,
    cautions: [],
    afterRepairing: [],
    measureAgain: ["askDemand"],
  },
  meterScaleSlip: {
    parts: [],
    minutes: 1,
    cautions: [],
    afterRepairing: [],
    measureAgain: ["feedTds", "permeateTds"],
  },
  gaugeOff: {
    parts: ["gauge"],
    minutes: 5,
    cautions: [],
    afterRepairing: [],
    measureAgain: ["staticPressure"],
  },
};
