import type { FaultId } from "@tapside/reverse-osmosis";
import type { Random } from "./random.ts";

/** What can be wrong in the district: a change of the unit's parameters, or of what is read and done. */
export type TroubleId = FaultId | "carbonSpent" | "meterScaleWrong" | "bypassed";

export interface Trouble {
  readonly id: TroubleId;
  /** Size of the parameter change, as the fault counts it. */
  readonly size: number;
  readonly onset: string;
}

/** Each kind with how many units have it and the sizes met: clear ones mostly, some faint. */
export const PLANTED: readonly (readonly [id: TroubleId, units: number, low: number, high: number])[] = [
  ["preFilterClogged", 6, 3, 20],
  ["fouledMembrane", 4, 0.5, 0.88],
  ["scaledMembrane", 3, 0.4, 0.8],
  ["oxidisedMembrane", 3, 2.2, 5],
  ["sealLeak", 3, 0.01, 0.15],
  ["restrictorBlocked", 2, 0.2, 0.55],
  ["restrictorTooBig", 1, 2.2, 3],
  ["airChargeLow", 3, 0, 25],
  ["airChargeHigh", 1, 190, 200],
  ["diaphragmRuptured", 2, 0.1, 0.25],
  ["checkValveFailed", 2, 4, 10],
  ["shutOffStuckOpen", 2, 1, 1],
  ["bypassOpen", 3, 0.01, 0.2],
  ["lowFeedPressure", 2, 190, 250],
  ["carbonSpent", 2, 0.3, 0.8],
  ["meterScaleWrong", 2, 1, 1],
  ["bypassed", 2, 1, 1],
];

/** How soon a kitchen notices, days; what is not here waits for the yearly visit. */
export const NOTICED_AFTER: Readonly<Partial<Record<TroubleId, readonly [number, number]>>> = {
  preFilterClogged: [10, 60],
  sealLeak: [20, 90],
  oxidisedMembrane: [30, 120],
  diaphragmRuptured: [1, 10],
  checkValveFailed: [5, 40],
  shutOffStuckOpen: [3, 30],
  restrictorBlocked: [30, 90],
  lowFeedPressure: [5, 30],
};

/** Work that puts it right, and the part that goes in. */
export const REPAIR: Readonly<Partial<Record<TroubleId, readonly string[]>>> = {
  preFilterClogged: ["replace:sediment", "replace:carbon"],
  fouledMembrane: ["replace:element"],
  scaledMembrane: ["replace:element"],
  oxidisedMembrane: ["replace:carbon", "replace:element"],
  sealLeak: ["replace:element"],
  restrictorBlocked: ["replace:restrictor"],
  restrictorTooBig: ["replace:restrictor"],
  airChargeLow: ["setAirCharge"],
  airChargeHigh: ["setAirCharge"],
  diaphragmRuptured: ["replace:tank"],
  checkValveFailed: ["replace:checkValve"],
  shutOffStuckOpen: ["replace:shutOff"],
  bypassOpen: ["findBackflow"],
  carbonSpent: ["replace:carbon"],
};

export const sizeOf = (low: number, high: number, random: Random): number =>
  Math.round(1000 * random.between(low, high)) / 1000;
