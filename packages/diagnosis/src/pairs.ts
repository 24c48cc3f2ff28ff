import { CAUSE_IDS, type CauseId } from "./causes.ts";

/** Causes of which only one can be at work: they change the same part. */
const ONE_OF: readonly (readonly CauseId[])[] = [
  ["restrictorBlocked", "drainLineBlocked", "restrictorTooBig"],
  ["airChargeLow", "airChargeHigh", "diaphragmRuptured", "tankValveClosed"],
  ["fouledMembrane", "scaledMembrane", "oxidisedMembrane"],
  ["tdsMeterOff", "meterScaleSlip"],
  ["checkValveFailed", "shutOffStuckOpen"],
  ["demandAboveCapacity", "tankValveClosed"],
];

/** Pairs of which one brings the other, or which age together: met oftener than by chance. */
export const OFTEN_TOGETHER: readonly (readonly [CauseId, CauseId])[] = [
  ["carbonExhausted", "oxidisedMembrane"],
  ["softenerFailed", "scaledMembrane"],
  ["preFilterClogged", "airChargeLow"],
  ["preFilterClogged", "carbonExhausted"],
  ["preFilterClogged", "fouledMembrane"],
  ["restrictorBlocked", "scaledMembrane"],
  ["coldWater", "preFilterClogged"],
  ["checkValveFailed", "carbonExhausted"],
  ["airChargeLow", "postFilterClogged"],
];

/** Whether two different causes can be at work together and still be told as two. */
export function canMeet(a: CauseId, b: CauseId): boolean {
  if (a === b || a === "healthy" || b === "healthy" || a === "tubingReversed" || b === "tubingReversed")
    return false;
  return !ONE_OF.some((group) => group.includes(a) && group.includes(b));
}

/** `canMeet` by index into `CAUSE_IDS`, row by row. */
export const CAN_MEET: Uint8Array = Uint8Array.from(
  CAUSE_IDS.flatMap((a) => CAUSE_IDS.map((b) => Number(canMeet(a, b)))),
);
