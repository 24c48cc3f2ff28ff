import type { UnitFile } from "@tapside/records";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarFile } from "./calendar.ts";
import type { DueRow } from "./due-list.ts";

const rowAt = (name: string, where = ""): DueRow => ({
  unit: "u1",
  file: {
    site: { id: "s", name },
    point: { id: "p", where },
    unit: { id: "u1", name: "Unit" },
  } as unknown as UnitFile,
  reasons: [
    { why: "date", on: "2026-11-30", role: "carbon" },
    { why: "litres", on: "2026-12-05", role: "sediment" },
    { why: "openPoint", detail: "no day" },
  ],
  overdue: false,
});

const words = {
  title: ({ file }: DueRow) => file.site.name ?? "",
  reason: ({ why }: { why: string }) => why,
};
const write = (rows: readonly DueRow[]) => calendarFile(rows, "2026-11-25T06:30:00.000Z", words);

/** Content lines put together again as RFC 5545, section 3.1 says: a line end and one space are taken out. */
const unfolded = (text: string) =>
  text
    .replace(/\r\n[ \t]/g, "")
    .split("\r\n")
    .slice(0, -1);
/** TEXT as section 3.3.11 says. */
const textOf = (line: string) =>
  line.slice(line.indexOf(":") + 1).replace(/\\([\\;,nN])/g, (_, sign) => (/n/i.test(sign) ? "\n" : sign));

describe("RFC 5545", () => {
  it("3.1: every line ends in CRLF and has at most 75 octets without it, whatever the signs", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (name) => {
        const text = write([rowAt(name, name)]);
        expect(text.endsWith("\r\n")).toBe(true);
        expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
        for (const line of text.split("\r\n"))
          expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      }),
    );
  });
  it("3.1 and 3.3.11: unfolded and unescaped it says what was written; no sign is cut in two", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (name) => {
        // biome-ignore lint/suspicious/noControlCharactersInRegex: controls have no place in TEXT
        const sayable = name.replace(/[\u0000-\u001F\u007F]/g, "");
        const summary = unfolded(write([rowAt(sayable)])).find((line) => line.startsWith("SUMMARY"));
        expect(textOf(summary ?? "")).toBe(sayable);
      }),
    );
  });
  it("3.3.11: the published example of escaping", () => {
    const said = "Project XYZ Final Review\nConference Room - 3B\nCome Prepared.";
    const summary = unfolded(write([rowAt(said)])).find((line) => line.startsWith("SUMMARY"));
    expect(summary).toBe("SUMMARY:Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
  });
  it("3.6.1: each event has UID, DTSTAMP in UTC and a whole day; its end is the day after", () => {
    const lines = unfolded(write([rowAt("Elm")]));
    expect(lines.filter((line) => line === "BEGIN:VEVENT")).toHaveLength(2);
    expect(lines.filter((line) => line === "END:VEVENT")).toHaveLength(2);
    expect(lines).toContain("DTSTAMP:20261125T063000Z");
    expect(lines).toContain("DTSTART;VALUE=DATE:20261130");
    expect(lines).toContain("DTEND;VALUE=DATE:20261201");
    const uids = lines.filter((line) => line.startsWith("UID:"));
    expect(new Set(uids).size).toBe(uids.length);
    expect([lines[0], lines[1], lines.at(-1)]).toEqual(["BEGIN:VCALENDAR", "VERSION:2.0", "END:VCALENDAR"]);
  });
});
