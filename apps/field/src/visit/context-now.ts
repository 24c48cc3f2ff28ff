import type { Context } from "@tapside/assessment";
import type { Book } from "@tapside/records";

/** The context of a judgement made on this phone now. */
export function contextNow(book: Book): Context {
  return {
    asOf: new Date().toISOString(),
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    settings: book.settings.get("settings") ?? {},
  };
}
