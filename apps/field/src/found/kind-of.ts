import type { RestrictorKind, Unit } from "@tapside/records";
import { restrictorAsFound } from "@tapside/reverse-osmosis";

/** What was said to hang there; two numbers without a kind are a rating. */
export const kindOf = (unit: Partial<Unit>): RestrictorKind | undefined =>
  unit.restrictorKind ?? (restrictorAsFound(unit).kind === "known" ? "rated" : undefined);
