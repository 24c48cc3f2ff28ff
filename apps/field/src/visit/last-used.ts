import {
  type Book,
  type Instrument,
  inBaseUnit,
  type Kept,
  type Reading,
  SLOTS,
  type SlotId,
  USUAL_DRAW_L,
} from "@tapside/records";
import type { OpenVisit } from "./use-visit.ts";

/** Unit a number is typed in first: the one this instrument was last read in, else its own, else the slot's. */
export function unitFirst(open: OpenVisit, slot: SlotId, instrument: Kept<Instrument> | undefined): string {
  const offered = (reading: Reading) => SLOTS[slot].units.includes(reading.unit);
  const last = newest(
    open.live.snapshot().book,
    (id, reading) => offered(reading) && (instrument ? reading.instrument === instrument.id : id === slot),
  );
  return last?.unit ?? instrument?.unit ?? SLOTS[slot].unit;
}

/** Unit of a number typed before any visit: the one it was last read in anywhere. */
export function unitUsual(book: Book, slot: SlotId): string {
  const last = newest(book, (id, reading) => id === slot && SLOTS[slot].units.includes(reading.unit));
  return last?.unit ?? SLOTS[slot].unit;
}

/** The cup offered first for a timed flow: the one used last for it. */
export function cupFirst(open: OpenVisit, slot: SlotId): number {
  const last = newest(
    open.live.snapshot().book,
    (id, reading) => id === slot && reading.volumeL !== undefined,
  );
  return last?.volumeL ?? (slot === "permeateFlow" ? 0.5 : 1);
}

/** Litres of the bucket test: as written in this visit, else as drawn last time, else eight. */
export function drawnReading(open: OpenVisit): { readonly raw: string; readonly unit: string } {
  const { drawnVolume } = open.visit.readings.asFound;
  const reading =
    drawnVolume ?? newest(open.live.snapshot().book, (id, one) => id === "drawnVolume" && one.value !== null);
  return reading ? { raw: reading.raw, unit: reading.unit } : { raw: String(USUAL_DRAW_L), unit: "L" };
}

export function drawnText(open: OpenVisit): string {
  const { raw, unit } = drawnReading(open);
  const litres = inBaseUnit("drawnVolume", Number(raw.replace(",", ".")), unit);
  return litres.kind === "known" ? `${raw} ${unit}` : `${USUAL_DRAW_L} L`;
}

function newest(book: Book, fits: (slot: string, reading: Reading) => boolean): Reading | undefined {
  let found: Reading | undefined;
  for (const visit of book.visit.values())
    for (const phase of ["asFound", "asLeft"] as const)
      for (const [slot, reading] of Object.entries(visit.readings[phase]))
        if (fits(slot, reading) && reading.at > (found?.at ?? "")) found = reading;
  return found;
}
