import type { Book, Kept, MeterCheck } from "@tapside/records";

/**
 * What a meter or gauge is held against in the morning. 1413 µS/cm is 0.01 mol/L potassium chloride at 25 °C
 * (from memory, unverified); 342 ppm as sodium chloride and a gauge's zero are common practice, no source.
 */
export const METER_STANDARDS: readonly { readonly value: number; readonly unit: string }[] = [
  { value: 1413, unit: "µS/cm" },
  { value: 84, unit: "µS/cm" },
  { value: 342, unit: "ppm" },
  { value: 1000, unit: "ppm" },
  { value: 0, unit: "psi" },
  { value: 0, unit: "bar" },
  { value: 0, unit: "kPa" },
];

/** The newest check of an instrument on a day ("2026-11-25"): it covers the readings of that day. */
export function checkOfDay(book: Book, instrument: string, isoDay: string): Kept<MeterCheck> | undefined {
  return [...book.meterCheck.values()]
    .filter((check) => check.instrument === instrument && dayOf(check.at) === isoDay)
    .sort((a, b) => ((a.at ?? "") < (b.at ?? "") ? 1 : -1))[0];
}

const dayOf = (iso: string | undefined): string => (iso ?? "").slice(0, 10);

/** How far off it read: percent of the standard, or the reading itself where the standard is zero. */
export function offBy(check: Pick<Kept<MeterCheck>, "standard" | "read">): number {
  const { standard = 0, read = 0 } = check;
  return standard === 0 ? read : (100 * (read - standard)) / standard;
}
