import type { SignId } from "./signs.ts";

/** A state of the unit several tests share; brought about once. */
export const SET_UPS = {
  permeateToWaste: 5,
  feedClosed: 1,
  tankEmptied: 12,
  standardAtHand: 1,
  housingOpen: 10,
} as const;
export type SetUpId = keyof typeof SET_UPS;

/** What has to be in the van for a test. */
export type Tool = "gauge" | "tdsMeter" | "tdsStandard" | "chlorineKit" | "hardnessKit" | "handPump";

export interface Test {
  readonly signs: readonly SignId[];
  /** Beyond its set-up. */
  readonly minutes: number;
  readonly setUp?: SetUpId;
  readonly tool?: Tool;
  /** Takes the unit or its water away from the kitchen. */
  readonly disturbsKitchen?: true;
}

/** Minutes: assumed, common practice, no source; editable. */
export const TESTS = {
  lookAtTankValve: { signs: ["tankValveShut"], minutes: 0.5 },
  lookAtTubing: { signs: ["tubingSwapped", "lineKinked"], minutes: 2 },
  lookAtMeterScale: { signs: ["meterScaleWrong"], minutes: 0.5, tool: "tdsMeter" },
  feelAirValve: { signs: ["waterAtAirValve"], minutes: 1 },
  temperature: { signs: ["temperature"], minutes: 0.5 },
  staticPressure: { signs: ["staticPressure"], minutes: 2, tool: "gauge" },
  beforeFilterPressure: { signs: ["beforeFilterPressure"], minutes: 1, tool: "gauge" },
  afterFilterPressure: { signs: ["afterFilterPressure"], minutes: 5, tool: "gauge" },
  elementPressure: { signs: ["elementPressure"], minutes: 3, tool: "gauge" },
  feedTds: { signs: ["feedTds"], minutes: 1, tool: "tdsMeter" },
  permeateTds: { signs: ["permeateTds"], minutes: 1, setUp: "permeateToWaste", tool: "tdsMeter" },
  permeateFlow: { signs: ["permeateFlow"], minutes: 3, setUp: "permeateToWaste" },
  drainFlow: { signs: ["drainFlow"], minutes: 3 },
  throttledFeed: {
    signs: ["throttledFlow", "throttledTds"],
    minutes: 6,
    setUp: "permeateToWaste",
    tool: "tdsMeter",
  },
  tankFullPressure: { signs: ["tankFullPressure"], minutes: 1, tool: "gauge" },
  drainTankFull: { signs: ["drainTankFullFlow"], minutes: 2 },
  drainFeedClosed: {
    signs: ["drainFeedClosedFlow"],
    minutes: 3,
    setUp: "feedClosed",
    disturbsKitchen: true,
  },
  bucket: { signs: ["gasL"], minutes: 6, setUp: "feedClosed", tool: "gauge", disturbsKitchen: true },
  drawOff: { signs: ["drawOffL"], minutes: 6, disturbsKitchen: true },
  outletFlow: { signs: ["outletFlow"], minutes: 2 },
  firstDraw: { signs: ["firstDrawTds"], minutes: 1, tool: "tdsMeter" },
  deliveredTds: { signs: ["deliveredTds"], minutes: 2, tool: "tdsMeter" },
  flushedTds: { signs: ["flushedTds"], minutes: 4, tool: "tdsMeter" },
  isolateBypass: { signs: ["isolatedTds"], minutes: 3, tool: "tdsMeter" },
  chlorineBefore: { signs: ["chlorineBefore"], minutes: 2, tool: "chlorineKit" },
  chlorineAfter: { signs: ["chlorineAfter"], minutes: 2, tool: "chlorineKit" },
  hardness: { signs: ["hardness"], minutes: 3, tool: "hardnessKit" },
  tdsStandard: { signs: ["tdsStandard"], minutes: 2, setUp: "standardAtHand", tool: "tdsStandard" },
  secondGauge: { signs: ["gaugeCheck"], minutes: 3, tool: "gauge" },
  airCharge: {
    signs: ["airCharge"],
    minutes: 3,
    setUp: "tankEmptied",
    tool: "handPump",
    disturbsKitchen: true,
  },
  drainLineOff: { signs: ["drainLineOffFlow"], minutes: 4 },
  openHousing: {
    signs: ["scaleSeen", "foulingSeen", "brineSealBad", "oRingBad"],
    minutes: 2,
    setUp: "housingOpen",
    disturbsKitchen: true,
  },
  askDemand: { signs: ["dailyLitres"], minutes: 2 },
} as const satisfies Record<string, Test>;

export type TestId = keyof typeof TESTS;

export const TEST_IDS = Object.keys(TESTS) as readonly TestId[];
