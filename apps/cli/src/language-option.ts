import { LANGUAGES, languageOf, type Messages } from "@tapside/words";
import { messagesIn } from "@tapside/words/every-language";
import type { CliIo } from "./command-verb.ts";

/** The words of the language asked for, else of the site's owner; undefined after a sentence that says which there are. */
export function wordsAsked(
  asked: string | undefined,
  ofSite: string | undefined,
  io: CliIo,
): Messages | undefined {
  if (asked === undefined || languageOf(asked)) return messagesIn(asked ?? ofSite);
  io.complain(`"${asked}" is no language known here: ${LANGUAGES.join(", ")}.`);
  return undefined;
}
