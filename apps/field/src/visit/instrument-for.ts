import type { Instrument, InstrumentKind, Kept, SlotId } from "@tapside/records";
import { SLOTS } from "@tapside/records";
import type { OpenVisit } from "./use-visit.ts";

/** The instrument taken up for a slot: the usual one of its kind, else the only one, else none. */
export function instrumentFor(open: OpenVisit, slot: SlotId): Kept<Instrument> | undefined {
  const kind = SLOTS[slot].instrument as InstrumentKind | undefined;
  const all = [...open.file.instruments.values()].filter((one) => one.kind === kind);
  return all.find((one) => one.usual) ?? all[0];
}

/** "± 0.7" at this reading, from the accuracy the instrument's record states; empty when it states none. */
export function spreadText(instrument: Kept<Instrument>, value: number | null): string {
  const ofReading = ((instrument.accuracyPercentOfReading ?? 0) / 100) * (value ?? 0);
  const ofScale = ((instrument.accuracyPercentOfFullScale ?? 0) / 100) * (instrument.fullScale ?? 0);
  const half = Math.max(ofReading, ofScale, (instrument.resolution ?? 0) / 2);
  return half > 0 ? `± ${half.toPrecision(half < 1 ? 1 : 2)}` : "";
}
