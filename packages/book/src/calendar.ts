import { daysAfter } from "./days.ts";
import type { DueReason, DueRow } from "./due-list.ts";

/** What stands in an event; one object per language. */
export interface CalendarWords {
  title(row: DueRow): string;
  reason(reason: DueReason): string;
}

/**
 * What is due as an iCalendar file, one all-day event per unit and day. `asOf` is an ISO instant.
 * Source: RFC 5545, sections 3.1 (lines of at most 75 octets, CRLF), 3.3.11 (escaping), 3.6.1 (events), 3.8.7.2 (DTSTAMP in UTC).
 */
export function calendarFile(rows: readonly DueRow[], asOf: string, words: CalendarWords): string {
  const stamp = asOf.replace(/[-:]/g, "").replace(/\.\d+/, "");
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Tapside//Due list//EN",
    "CALSCALE:GREGORIAN",
    "METHOD:PUBLISH",
    ...rows.flatMap((row) => eventsOf(row, stamp, words)),
    "END:VCALENDAR",
  ];
  return `${lines.map(folded).join("\r\n")}\r\n`;
}

function eventsOf(row: DueRow, stamp: string, words: CalendarWords): readonly string[] {
  const days = new Map<string, DueReason[]>();
  for (const reason of row.reasons)
    if (reason.on) days.set(reason.on, [...(days.get(reason.on) ?? []), reason]);
  return [...days].flatMap(([day, reasons]) => [
    "BEGIN:VEVENT",
    `UID:${row.unit}-${day}@tapside`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${day.replaceAll("-", "")}`,
    `DTEND;VALUE=DATE:${daysAfter(day, 1).replaceAll("-", "")}`,
    `SUMMARY:${escaped(words.title(row))}`,
    `DESCRIPTION:${escaped(reasons.map(words.reason).join("\n"))}`,
    `LOCATION:${escaped([row.file.site.name, row.file.site.address, row.file.point.where].filter(Boolean).join(", "))}`,
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ]);
}

/** Backslash, semicolon, comma and line end are escaped; other control signs have no place in a text. */
const escaped = (text: string): string =>
  text
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replace(/\r\n|\r|\n/g, "\\n")
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what RFC 5545 shuts out
    .replace(/[\u0000-\u0008\u000B-\u001F\u007F]/g, "");

const MOST_OCTETS = 75;

/** Folded so that no line has more than 75 octets without its end; no sign is cut in two. */
function folded(line: string): string {
  const octets = (sign: string) => new TextEncoder().encode(sign).length;
  let out = "";
  let used = 0;
  for (const sign of line) {
    const size = octets(sign);
    if (used + size > MOST_OCTETS) {
      out += "\r\n ";
      used = 1;
    }
    out += sign;
    used += size;
  }
  return out;
}
