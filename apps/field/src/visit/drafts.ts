import type { Phase, SlotId } from "@tapside/records";
import type { LiveBook } from "../store/open-book.ts";

const draftRecord = (visitId: string) => `draft:${visitId}`;

/** What was typed of a number and not yet taken as a reading: kept with every key, so that nothing typed is lost. */
export function draftOf(live: LiveBook, visitId: string, phase: Phase, slot: SlotId): string {
  const text = live.field(draftRecord(visitId), `${phase}:${slot}`);
  return typeof text === "string" ? text : "";
}

export const keepDraft = (live: LiveBook, visitId: string, phase: Phase, slot: SlotId, raw: string) =>
  void live.write("draft", draftRecord(visitId), { [`${phase}:${slot}`]: raw }, { undoable: false });
