import { expect, it } from "vitest";
import { readingsCsv } from "./csv.ts";
import { demoUnit } from "./test-support/demo-record.ts";

it("has a line for every reading of every visit, as typed", () => {
  const file = demoUnit(1);
  const readings = file.visits.flatMap((visit) =>
    Object.values(visit.readings).flatMap((phase) => Object.values(phase)),
  );
  const lines = readingsCsv([file]).trimEnd().split("\n");
  expect(lines).toHaveLength(1 + readings.length);
  expect(lines[0]).toContain("raw,value,unit_of_value");
  expect(lines.find((line) => line.includes(",asFound,feedTds,"))).toContain(",212,212,ppm,NaCl,");
});

it("quotes commas and quotes (RFC 4180, section 2, rules 6 and 7)", () => {
  const file = demoUnit(1);
  expect(readingsCsv([{ ...file, site: { ...file.site, name: 'Mill, "old"' } }])).toContain(
    '"Mill, ""old""",',
  );
});
