import { formatUncertain, instrumentUncertainty } from "@tapside/quantities";
import type { Instrument, InstrumentKind, Kept, SlotId } from "@tapside/records";
import { SLOTS } from "@tapside/records";
import { messages } from "../words/messages.ts";
import type { OpenVisit } from "./use-visit.ts";

/** The instrument taken up for a slot: the usual one of its kind, else the only one, else none. */
export function instrumentFor(open: OpenVisit, slot: SlotId): Kept<Instrument> | undefined {
  const kind = SLOTS[slot].instrument as InstrumentKind | undefined;
  const all = [...open.file.instruments.values()].filter((one) => one.kind === kind);
  return all.find((one) => one.usual) ?? all[0];
}

/** Standard uncertainty of a reading by what the instrument's record states; 0 when it states nothing. */
export function readingU(instrument: Kept<Instrument> | undefined, value: number): number {
  if (!instrument) return 0;
  const { accuracyPercentOfReading, accuracyPercentOfFullScale, fullScale, resolution } = instrument;
  return instrumentUncertainty(value, {
    ...(accuracyPercentOfReading !== undefined && { percentOfReading: accuracyPercentOfReading }),
    ...(accuracyPercentOfFullScale !== undefined && { percentOfFullScale: accuracyPercentOfFullScale }),
    ...(fullScale !== undefined && { fullScale }),
    ...(resolution !== undefined && { resolution }),
  }).u;
}

/** "± 0.8", the expanded uncertainty as everywhere else; empty when it is not known. */
export function spreadText(instrument: Kept<Instrument>, value: number | null): string {
  const { uText } = formatUncertain(
    { value: value ?? 0, u: readingU(instrument, value ?? 0) },
    messages.decimalSign,
  );
  return uText ? `± ${uText}` : "";
}
