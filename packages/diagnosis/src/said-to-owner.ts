import type { CauseId } from "./causes.ts";
import type { Odds } from "./odds.ts";

/** What an owner's record may say of a cause. Never odds. */
export type Said = "found" | "mostLikely" | "notConfirmed";

/**
 * What the record says of a cause: "found" only when it was put right and measuring again no longer shows it; "mostLikely" from one in
 * two; otherwise it was not confirmed.
 */
export function saidToOwner(cause: CauseId, before: Odds, afterRepair?: Odds): Said {
  const chance = (odds: Odds) => odds.causes.find((one) => one.cause === cause)?.probability ?? 0;
  if (chance(before) < 0.5) return "notConfirmed";
  return afterRepair && chance(afterRepair) < 0.1 ? "found" : "mostLikely";
}
