import type { Missing, Refused } from "@tapside/quantities";
import { messages } from "./messages.ts";

/** Why there is no answer, in one sentence. */
export const sayWhyNot = (outcome: Missing | Refused): string =>
  outcome.kind === "missing" ? `${messages.missing(outcome)}.` : messages.refusal(outcome);
