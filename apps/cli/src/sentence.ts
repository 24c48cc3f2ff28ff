import type { Outcome } from "@tapside/quantities";
import { en } from "@tapside/words/en";

/** Why there is no answer, in the words of the phone. */
export function sentence(outcome: Exclude<Outcome<never>, { kind: "known" }>): string {
  return outcome.kind === "refused"
    ? en.refusal(outcome)
    : `Cannot tell: ${outcome.missing.join(", ")} ${outcome.missing.length > 1 ? "are" : "is"} missing.`;
}

/** A column nothing reads, and the one it was probably meant for. */
export const columnMistaken = (written: string, meant: string): string =>
  `The column ${written} is not read. If it is ${meant}, name it so.`;
