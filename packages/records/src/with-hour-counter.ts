import type { UnitFile } from "./book.ts";
import type { SlotId } from "./kinds.ts";

/** The hour counter is read beside the water meter where a part in the unit is made for a number of hours. */
export const withHourCounter = (
  slots: readonly SlotId[],
  { parts }: Pick<UnitFile, "parts">,
): readonly SlotId[] =>
  parts.some((part) => !part.removedOn && part.ratedHours! > 0)
    ? slots.flatMap((slot): readonly SlotId[] => (slot === "waterMeter" ? [slot, "hourCounter"] : [slot]))
    : slots;
