import { Band } from "../look/band.tsx";
import { pendingOf, photosWanted } from "./pending.ts";
import { slotTitle } from "./step-title.ts";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords as words } from "./words.ts";

/** Photographed readings whose number is still to be typed, and cameras opened from which no picture came. */
export function StillToType({ open }: { open: OpenVisit }) {
  return (
    <>
      {pendingOf(open.visit).map(({ phase, slot, reading }) => (
        <Band key={`${phase}:${slot}`} tint press={{ to: `${open.base}/read/${phase}/${slot}` }}>
          <strong>{words.typeNumber(slotTitle(slot))}</strong>
          <p className="note">
            {words.photoAt(new Date(reading.at).toLocaleTimeString([], { timeStyle: "short" }))}
          </p>
        </Band>
      ))}
      {photosWanted(open.visit).map(({ id, phase, slot }) => (
        <Band key={id} tint press={{ to: `${open.base}/read/${phase}/${slot}` }}>
          {words.photoWanted(slotTitle(slot))}
        </Band>
      ))}
    </>
  );
}
