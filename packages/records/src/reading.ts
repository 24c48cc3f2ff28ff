import { convert, known, mapOutcome, type Outcome, parseReading, refused } from "@tapside/quantities";
import type { Reading, SlotId, TdsScale } from "./kinds.ts";
import { SLOTS, type Slot } from "./slots.ts";

export interface TypedReading {
  readonly slot: SlotId;
  readonly raw: string;
  readonly unit: string;
  /** ISO 8601 with offset. */
  readonly at: string;
  readonly scale?: TdsScale | undefined;
  readonly volumeL?: number | undefined;
  readonly instrument?: string | undefined;
  readonly notDetected?: boolean | undefined;
  readonly photo?: string | undefined;
  readonly doubtful?: boolean | undefined;
}

/**
 * A reading from what was typed. Refused: what `parseReading` refuses, "unit-not-for-slot",
 * "cup-needs-volume", "out-of-range" (with value, unit, low and high in that unit).
 */
export function makeReading(typed: TypedReading): Outcome<Reading> {
  const { slot: id, raw, unit, at, ...rest } = typed;
  const slot = SLOTS[id];
  const volumeL = typed.volumeL ?? slot.volumeL;
  if (!slot.units.includes(unit)) return refused("unit-not-for-slot", { slot: id, unit });
  return mapOutcome(parseReading(raw), ({ value }) =>
    mapOutcome(plausible(slot, value, unit, volumeL), () =>
      known({ raw, value, unit, port: slot.port, at, ...cupOf(unit, volumeL), ...given(rest) }),
    ),
  );
}

/** Photo now, number later: the place is kept with the photo, its time and the meter; there is no value yet. */
export function photographed(typed: Omit<TypedReading, "raw" | "notDetected"> & { photo: string }): Reading {
  const { slot, unit, at, ...rest } = typed;
  return { raw: "", value: null, unit, port: SLOTS[slot].port, at, ...given(rest) };
}

/** A reading in the slot's base unit: mg/L as the meter shows it, °C, kPa gauge, L/h, L or mg/L CaCO3. */
export function inBaseUnit(id: SlotId, value: number, unit: string, volumeL?: number): Outcome<number> {
  return toBase(SLOTS[id], value, unit, volumeL);
}

/** Whether a value lies outside the range one would expect: taken, but asked about. */
export function isUnusual(id: SlotId, reading: Pick<Reading, "value" | "unit" | "volumeL">): boolean {
  if (reading.value === null) return false;
  const base = inBaseUnit(id, reading.value, reading.unit, reading.volumeL);
  const { low, high } = SLOTS[id].soft;
  return base.kind === "known" && (base.value < low || base.value > high);
}

function toBase(slot: Slot, value: number, unit: string, volumeL: number | undefined): Outcome<number> {
  if (unit === "s") {
    if (!volumeL || volumeL <= 0) return refused("cup-needs-volume");
    return value > 0
      ? known((volumeL / value) * 3600)
      : refused("out-of-range", { value, unit, low: 0, high: 3600 });
  }
  if (unit === "µS/cm") return known(value / 2);
  if (slot.baseUnit === "pH") return known(value);
  return convert(value, unit, slot.baseUnit);
}

function plausible(slot: Slot, value: number, unit: string, volumeL: number | undefined): Outcome<number> {
  return mapOutcome(toBase(slot, value, unit, volumeL), (base) => {
    const { low, high } = slot.hard;
    if (base >= low && base <= high) return known(base);
    return refused("out-of-range", { value, unit, low, high, rangeUnit: slot.baseUnit });
  });
}

const cupOf = (unit: string, volumeL: number | undefined) =>
  unit === "s" && volumeL !== undefined ? { volumeL } : {};

function given(rest: Omit<TypedReading, "slot" | "raw" | "unit" | "at">): Partial<Reading> {
  const { volumeL: _, ...others } = rest;
  return Object.fromEntries(Object.entries(others).filter(([, value]) => value !== undefined));
}
