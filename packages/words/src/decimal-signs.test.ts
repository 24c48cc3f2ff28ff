import { expect, it } from "vitest";
import { writeDecimals } from "./decimal-signs.ts";

// Source of the sign: Unicode CLDR, numbers of "es-MX", through the platform's own number format.
it("words of a language that are loaded where its region writes a point write a point", async () => {
  const mexico = new Intl.NumberFormat("es-MX").formatToParts(1.5).find(({ type }) => type === "decimal");
  writeDecimals("es", mexico?.value as ".");
  const { es } = await import("./es/index.ts");
  const { number } = await import("./es/number.ts");
  expect(es.decimalSign).toBe(".");
  expect(number(1.5)).toBe("1.5");
  const words = es.record.filling("left", 2.13);
  expect(words).toContain("2.1");
  expect(words).not.toMatch(/\d,\d/);
});
