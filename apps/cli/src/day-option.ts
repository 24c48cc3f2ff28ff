import type { Messages } from "@tapside/words";
import type { CliIo } from "./command-verb.ts";
import { bookWordsIn } from "./words/book-words.ts";

/** The day asked for (`2026-11-25`), else today in UTC; undefined after a sentence that says it is none. */
export function dayAsked(asked: string | undefined, { language }: Messages, io: CliIo): string | undefined {
  const day = asked ?? new Date().toISOString().slice(0, 10);
  if (/^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(Date.parse(day))) return day;
  io.complain(bookWordsIn(language).noDay(day));
  return undefined;
}
