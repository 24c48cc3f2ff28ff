/** Why somebody called; "routine" when nobody did. */
export const COMPLAINTS = ["routine", "runsOut", "weakAtTap", "taste", "highSolids", "drainRuns"] as const;
export type Complaint = (typeof COMPLAINTS)[number];

export interface Cause {
  /** How often it is met, relative. Invented, meant to be replaced by the company's own counts. */
  readonly weight: number;
  /** Which complaints it brings, relative; in the order of `COMPLAINTS`. */
  readonly complaints: readonly number[];
  /** Among the causes of the feasibility study against which the scores are stated. */
  readonly studied: boolean;
}

const cause = (weight: number, complaints: readonly number[], studied = true): Cause => ({
  weight,
  complaints,
  studied,
});

/**
 * The catalogue: what can be wrong (or right) with a small unit and its tank.
 * Source: list, weights and complaints: assumed, common practice, no source; weights are relative and editable.
 */
export const CAUSES = {
  healthy: cause(10, [14, 1, 1, 1, 1, 1]),
  fouledMembrane: cause(10, [5, 8, 2, 0, 1, 0]),
  scaledMembrane: cause(8, [4, 6, 1, 1, 5, 0]),
  oxidisedMembrane: cause(4, [3, 0, 0, 5, 6, 1]),
  sealLeak: cause(4, [4, 0, 0, 1, 8, 0]),
  brineSeal: cause(2, [4, 5, 0, 0, 4, 0]),
  restrictorBlocked: cause(5, [5, 2, 0, 1, 5, 0]),
  drainLineBlocked: cause(2, [5, 2, 0, 1, 5, 0]),
  restrictorTooBig: cause(2, [3, 4, 0, 0, 0, 6]),
  preFilterClogged: cause(16, [6, 10, 3, 0, 0, 0]),
  shutOffSticking: cause(3, [3, 9, 2, 0, 0, 0]),
  lowFeedPressure: cause(5, [2, 8, 3, 0, 1, 0]),
  coldWater: cause(5, [3, 9, 1, 0, 0, 0]),
  airChargeLow: cause(6, [5, 4, 6, 0, 0, 0]),
  airChargeHigh: cause(2, [3, 8, 2, 0, 0, 0]),
  diaphragmRuptured: cause(5, [1, 8, 5, 2, 0, 1]),
  tankValveClosed: cause(2, [1, 6, 8, 0, 0, 0]),
  checkValveFailed: cause(4, [2, 1, 0, 0, 2, 10]),
  shutOffStuckOpen: cause(4, [2, 0, 0, 0, 1, 12]),
  bypassOpen: cause(4, [3, 0, 0, 2, 10, 0]),
  tdsMeterOff: cause(3, [6, 0, 0, 0, 6, 0]),
  sampleAfterStandby: cause(5, [5, 0, 0, 1, 9, 0]),
  tubingReversed: cause(1, [1, 1, 0, 4, 8, 1]),
  carbonExhausted: cause(8, [4, 0, 0, 12, 0, 0]),
  softenerFailed: cause(6, [6, 0, 0, 1, 6, 0]),
  feedSolidsChanged: cause(3, [4, 0, 0, 2, 8, 0]),
  postFilterClogged: cause(5, [3, 2, 11, 0, 0, 0]),
  boosterWeak: cause(2, [2, 8, 2, 0, 2, 0], false),
  kinkedLine: cause(2, [1, 5, 6, 0, 0, 0], false),
  demandAboveCapacity: cause(3, [1, 12, 1, 0, 0, 0], false),
  meterScaleSlip: cause(3, [7, 0, 0, 0, 5, 0], false),
  gaugeOff: cause(2, [8, 1, 0, 0, 0, 0], false),
} as const satisfies Record<string, Cause>;

export type CauseId = keyof typeof CAUSES;

export const CAUSE_IDS = Object.keys(CAUSES) as readonly CauseId[];
