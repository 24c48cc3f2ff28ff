import { expect, test } from "vitest";
import { writtenDay } from "./written-day.ts";

test("a day reads the same way in both languages: day, month by name, year", () => {
  expect(writtenDay("en")("2026-09-14")).toBe("14 Sept 2026");
  expect(writtenDay("es")("2027-01-05")).toBe("5 ene 2027");
});

test("the names of the months are the platform's (Unicode CLDR)", () => {
  for (let month = 0; month < 12; month++) {
    const day = new Date(Date.UTC(2026, month, 15));
    const iso = day.toISOString().slice(0, 10);
    const name = (locale: string) => day.toLocaleDateString(locale, { month: "short", timeZone: "UTC" });
    expect(writtenDay("en")(iso)).toBe(`15 ${name("en-GB")} 2026`);
    expect(writtenDay("es")(iso)).toBe(`15 ${name("es-419")} 2026`);
  }
});

test("what is no day stays as it came", () => {
  for (const text of ["", "no end date given", "2026-13-01", "2026-11"])
    expect(writtenDay("en")(text)).toBe(text);
});
