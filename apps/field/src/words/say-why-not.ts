import type { Missing, Refused } from "@tapside/quantities";
import { en } from "@tapside/words";

/** Why there is no answer, in one sentence. */
export const sayWhyNot = (outcome: Missing | Refused): string =>
  outcome.kind === "missing" ? `${en.missing(outcome)}.` : en.refusal(outcome);
