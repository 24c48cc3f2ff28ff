import { absentPorts, FURTHER_SLOTS, SLOTS, type SlotId } from "@tapside/records";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import { readingText } from "./reading-text.ts";
import { slotTitle } from "./step-title.ts";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

const ASKED_SOMETIMES: readonly SlotId[] = ["staticPressure", "airCharge", "hardness"];

/** What may be measured beside: nothing of it is asked for, all of it is judged. */
export function Also({ open }: { open: OpenVisit }) {
  const { steps, to, hint } = useGoOn(open, "");
  const absent = new Set(absentPorts(open.file.unit));
  const slots = [...ASKED_SOMETIMES, ...FURTHER_SLOTS].filter((slot) => !absent.has(SLOTS[slot].port));
  return (
    <Screen
      title={words.also}
      subtitle={words.alsoHint}
      ticks={<VisitTicks steps={steps} here="" />}
      back={{ label: words.visit, to: open.base }}
      middle={photoPress(open, "asFound")}
      next={{ label: words.next, hint, to }}
    >
      {slots.map((slot) => {
        const reading = open.visit.readings.asFound[slot];
        return (
          <Band key={slot} press={{ to: `${open.base}/read/asFound/${slot}` }} tint={!reading}>
            <span className="row">
              <span>{slotTitle(slot)}</span>
              <span className={reading ? undefined : "note"}>
                {reading ? readingText(reading) : (words.slotHint[slot] ?? "")}
              </span>
            </span>
          </Band>
        );
      })}
    </Screen>
  );
}
