import type { Outcome } from "@tapside/quantities";
import { en } from "@tapside/words";

/** Why a figure is not there; empty when it is. */
export function whyNot(outcome: Outcome<unknown>): string {
  if (outcome.kind === "missing") return en.missing(outcome);
  return outcome.kind === "refused" ? en.refusal(outcome) : "";
}
