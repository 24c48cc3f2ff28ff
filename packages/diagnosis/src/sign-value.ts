import { inBaseUnit, type Reading, type SlotId } from "@tapside/records";
import { convertTdsScale } from "@tapside/water";

/** A slot's reading in coherent units, solids as sodium chloride; absent when doubtful, not typed yet, or not convertible. */
export function signValue(slot: SlotId, reading: Reading | undefined): number | undefined {
  if (!reading || reading.doubtful || reading.value === null) return undefined;
  const base = inBaseUnit(slot, reading.value, reading.unit, reading.volumeL);
  if (base.kind !== "known") return undefined;
  if (reading.notDetected) return base.value / 4;
  if (!reading.scale || reading.scale === "NaCl" || !(base.value > 0)) return base.value;
  const sodium = convertTdsScale(base.value, reading.scale, "NaCl");
  return sodium.kind === "known" ? sodium.value.value : undefined;
}
