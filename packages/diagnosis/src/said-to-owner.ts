import type { CauseId } from "./causes.ts";
import type { Odds } from "./odds.ts";

/** What an owner's record may say of a cause. Never odds. */
export type Said = "found" | "mostLikely" | "notConfirmed";

export interface CauseShown {
  readonly cause: CauseId;
  readonly before: Odds;
  /** After it was put right and measured again. */
  readonly after?: Odds | undefined;
  /** The technician saw it: said so after measuring again. */
  readonly confirmed?: boolean;
}

/**
 * What the record says of a cause: "found" only when it was put right, measuring again no longer shows it, and the technician says so;
 * "mostLikely" from one in two; otherwise it was not confirmed.
 */
export function saidToOwner({ cause, before, after, confirmed = false }: CauseShown): Said {
  const chance = (odds: Odds) => odds.causes.find((one) => one.cause === cause)?.probability ?? 0;
  if (confirmed && after && chance(after) < 0.1) return "found";
  return chance(before) >= 0.5 ? "mostLikely" : "notConfirmed";
}
