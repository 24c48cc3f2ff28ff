import type { Outcome } from "@tapside/quantities";
import { en } from "@tapside/words";

/** Why there is no answer, in the words of the phone. */
export function sentence(outcome: Exclude<Outcome<never>, { kind: "known" }>): string {
  return outcome.kind === "refused"
    ? en.refusal(outcome)
    : `Cannot tell: ${outcome.missing.join(", ")} is missing.`;
}
