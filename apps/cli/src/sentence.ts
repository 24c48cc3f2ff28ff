import type { Outcome } from "@tapside/quantities";
import type { Messages } from "@tapside/words";
import { en } from "@tapside/words/en";
import { bookWordsIn } from "./words/book-words.ts";

/** Why there is no answer, in the words of the phone. */
export function sentence(outcome: Exclude<Outcome<never>, { kind: "known" }>, words: Messages = en): string {
  return outcome.kind === "refused"
    ? words.refusal(outcome)
    : bookWordsIn(words.language).missing(outcome.missing.join(", "), outcome.missing.length);
}

/** A column nothing reads, and the one it was probably meant for. */
export const columnMistaken = (written: string, meant: string): string =>
  `The column ${written} is not read. If it is ${meant}, name it so.`;
