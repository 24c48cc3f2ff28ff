import type { SlotId, UnitFile } from "@tapside/records";
import { usualPermeatePump, usualPermeatePumpScatter } from "@tapside/reverse-osmosis";
import { hasPermeatePump } from "../shut-off-ratio.ts";
import { amountOf, type PhaseReadings } from "./amounts.ts";

/** A permeate pump lifts above the feed, by its ratio at the most; that is hardly known. */
export function liftAboveFeedKPa(readings: PhaseReadings, file: UnitFile, slot: SlotId): number {
  const feed = amountOf(slot, readings, file);
  if (!hasPermeatePump(file) || feed.kind !== "known") return 0;
  const highest = usualPermeatePump.strokeRatio * (1 + 2 * usualPermeatePumpScatter.strokeRatioRelative);
  return (highest - 1) * feed.value.value;
}
