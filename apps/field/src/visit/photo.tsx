import { type Phase, photographed, type Reading, type SlotId } from "@tapside/records";
import type { Press } from "../look/screen.tsx";
import { shrinkPhoto } from "./shrink-photo.ts";
import type { OpenVisit } from "./use-visit.ts";
import { visitWords as words } from "./words.ts";

/** The camera key: keeps "photo wanted" before the camera opens, then the picture itself. */
export function photoPress(open: OpenVisit, wantedFor: string): Press {
  return { label: words.photo, onPress: () => takePhoto(open, wantedFor) };
}

/** Photo now, number later: the reading is kept with the photo and its time, its number still to be typed. */
export const photoOfReading = (
  open: OpenVisit,
  phase: Phase,
  slot: SlotId,
  how: Partial<Pick<Reading, "instrument" | "scale">> & { readonly unit: string },
  then: () => void,
): Press => ({
  label: words.photoNow,
  onPress: () =>
    takePhoto(open, `${phase}:${slot}`, (photo, at) => {
      const kept = open.live.snapshot().book.visit.get(open.visit.id)?.readings[phase][slot];
      const reading =
        kept && kept.value !== null ? { ...kept, photo } : photographed({ slot, at, photo, ...how });
      open.write({ [`reading:${phase}:${slot}`]: { ...reading }, [`skip:${phase}:${slot}`]: null });
      if (reading.value === null) then();
    }),
});

function takePhoto(open: OpenVisit, wantedFor: string, then?: (hash: string, at: string) => void) {
  const field = `photo:${open.live.newId()}`;
  const at = new Date().toISOString();
  open.write({ [field]: { for: wantedFor, hash: null, at } });
  const input = document.createElement("input");
  input.type = "file";
  input.accept = "image/*";
  input.setAttribute("capture", "environment");
  input.addEventListener("cancel", () => open.write({ [field]: null }));
  input.addEventListener("change", async () => {
    const file = input.files?.[0];
    if (!file) return open.write({ [field]: null });
    const hash = await open.live.putPhoto(await shrinkPhoto(file), "image/jpeg");
    open.write({ [field]: { for: wantedFor, hash, at } });
    then?.(hash, at);
  });
  input.click();
}
