import type { KeptVisit, Phase, Reading, SlotId } from "@tapside/records";

export interface Pending {
  readonly phase: Phase;
  readonly slot: SlotId;
  readonly reading: Reading;
}

/** Readings photographed whose number is not typed yet, oldest first. */
export const pendingOf = (visit: KeptVisit): readonly Pending[] =>
  (["asFound", "asLeft"] as const)
    .flatMap((phase) =>
      Object.entries(visit.readings[phase]).map(([slot, reading]) => ({
        phase,
        slot: slot as SlotId,
        reading,
      })),
    )
    .filter(({ reading }) => reading.value === null)
    .sort((a, b) => (a.reading.at < b.reading.at ? -1 : 1));

/** Readings for which the camera was opened and no picture came back. */
export const photosWanted = (visit: KeptVisit): readonly { id: string; phase: Phase; slot: SlotId }[] =>
  Object.entries(visit.photos).flatMap(([id, note]) => {
    const [phase, slot] = note.for.split(":");
    const open = note.hash === null && (phase === "asFound" || phase === "asLeft") && slot;
    return open && !visit.readings[phase][slot as SlotId] ? [{ id, phase, slot: slot as SlotId }] : [];
  });
