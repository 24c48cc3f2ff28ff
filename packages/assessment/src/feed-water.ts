import { convert } from "@tapside/quantities";
import type { KeptVisit, SlotId, UnitFile } from "@tapside/records";
import { type FieldReadings, readingsOfReport, readReport } from "@tapside/water";
import { scaleOf, usable } from "./internal/amounts.ts";
import { phaseReadings } from "./internal/phase-readings.ts";
import { convertTds } from "./internal/tds-scale.ts";

type Scope = Pick<UnitFile, "instruments" | "analyses">;
type Read = Pick<KeptVisit, "readings"> & Partial<KeptVisit>;

const IONS = { feedChloride: "Cl", feedSilica: "SiO2" } as const;

/** The site's newest analysis, as readings. */
function reported(file: Scope): FieldReadings {
  const newest = file.analyses?.at(-1);
  const report = newest?.lines ? readReport(newest.lines) : undefined;
  return report?.kind === "known" ? readingsOfReport(report.value) : {};
}

/** What a visit read of the feed, as found: conductivity, hardness, alkalinity, pH, temperature, chloride, silica. */
function visited(visit: Read, file: Scope): FieldReadings {
  const readings = phaseReadings(visit as KeptVisit, "asFound");
  const value = (slot: SlotId, unit: string): number | undefined => {
    const reading = readings[slot];
    if (!usable(reading)) return undefined;
    const asked = reading.unit === unit ? reading.value : convert(reading.value, reading.unit, unit);
    return typeof asked === "number" ? asked : asked.kind === "known" ? asked.value : undefined;
  };
  const feed = readings.feedTds;
  const ec = !usable(feed)
    ? undefined
    : feed.unit === "µS/cm"
      ? feed.value
      : convertTds(feed.value, scaleOf(feed, file), "EC");
  const ions = Object.entries(IONS).map(([slot, id]) => [id, value(slot as SlotId, "mg/L")] as const);
  const plain = {
    ec25UsPerCm: ec,
    temperatureC: value("feedTemperature", "°C"),
    hardnessMgPerLCaCO3: value("hardness", "mg/L CaCO3"),
    alkalinityMgPerLCaCO3: value("feedAlkalinity", "mg/L CaCO3"),
    pH: value("feedPh", "pH"),
  };
  const given = (entries: readonly (readonly [string, number | undefined])[]) =>
    Object.fromEntries(entries.filter(([, one]) => one !== undefined));
  return { ...given(Object.entries(plain)), ions: given(ions) };
}

/**
 * What is known of a feed water: the site's newest analysis, and over it what the visit itself read. A figure read today
 * stands in place of the report's, with the doubt of a reading.
 */
export function feedWaterReadings(visit: Read, file: Scope): FieldReadings {
  const [report, today] = [reported(file), visited(visit, file)];
  const read = new Set([...Object.keys(today), ...Object.keys(today.ions ?? {})]);
  const spread = Object.entries(report.spread ?? {}).filter(([name]) => !read.has(name));
  return {
    ...report,
    ...today,
    ions: { ...report.ions, ...today.ions },
    spread: Object.fromEntries(spread),
  };
}

/** Names of what was given, ions among them. */
export const givenNames = ({ ions, spread: _, ...rest }: FieldReadings): readonly string[] => [
  ...Object.keys(rest),
  ...Object.keys(ions ?? {}),
];
