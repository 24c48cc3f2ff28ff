import { expect, it, vi } from "vitest";
import { learn } from "../words/packs.ts";

await learn("first", "en");
const { day, weekdayOf, withDays } = await import("./day.ts");

/** The names are those of the platform's own en-GB calendar (Unicode CLDR), for every month and weekday of two years. */
it("writes days as the platform's calendar does", () => {
  for (let n = 0; n < 730; n += 1) {
    const date = new Date(2027, 0, 1 + n, 12);
    const own = { day: "numeric", month: "short" } as const;
    expect(day(date.toISOString())).toBe(date.toLocaleDateString("en-GB", { ...own, year: "numeric" }));
    expect(weekdayOf(date)).toBe(
      date.toLocaleDateString("en-GB", { ...own, weekday: "long" }).replace(",", ""),
    );
  }
});

it("says nothing of no day", () => {
  expect(day(undefined)).toBe("");
  expect(day("yesterday")).toBe("");
});

it.each(["America/Mexico_City", "Pacific/Auckland", "UTC"])("a day alone is that day in %s", (zone) => {
  vi.stubEnv("TZ", zone);
  expect(day("2026-11-25")).toBe("25 Nov 2026");
  expect(withDays("due by date: 2026-11-25, litres 44")).toBe("due by date: 25 Nov 2026, litres 44");
  vi.unstubAllEnvs();
});
