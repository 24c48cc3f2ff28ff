import type { Context } from "@tapside/assessment";
import type { Book } from "@tapside/records";

let zone = { offsetMinutes: Number.NaN, name: "" };

/** Asking for the zone's name costs milliseconds on a phone; it is asked again when the clock's offset has changed. */
function timeZone(now: Date): string {
  const offsetMinutes = now.getTimezoneOffset();
  if (offsetMinutes !== zone.offsetMinutes)
    zone = { offsetMinutes, name: Intl.DateTimeFormat().resolvedOptions().timeZone };
  return zone.name;
}

/** The context of a judgement made on this phone now. */
export function contextNow(book: Book): Context {
  const now = new Date();
  return {
    asOf: now.toISOString(),
    timeZone: timeZone(now),
    settings: book.settings.get("settings") ?? {},
  };
}
