import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { decimalSignOf } from "../words/decimal-sign.ts";
import { AmountEntry } from "./amount-entry.tsx";
import { undoPress, useGoOn } from "./go-on.ts";
import { kindWords as words } from "./kind-words.ts";
import { photoPress } from "./photo.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";

const USUAL_MINUTES = 10;

/** "No drip seen during n minutes at p": what was seen, never "leak check passed". */
export function Drips({ open }: { open: OpenVisit }) {
  const { go, hint, steps } = useGoOn(open, "drips");
  const given = open.visit.answers.drips;
  const [minutes, setMinutes] = useState<number | undefined>(given?.minutes ?? USUAL_MINUTES);
  const flowing =
    open.visit.readings.asFound.beforeFilterPressure ?? open.visit.readings.asFound.staticPressure;
  const [problem, setProblem] = useState("");
  const answer = (seen: "none" | "some") => {
    if (!minutes) return setProblem(words.needMinutes);
    open.write({
      "answer:drips": {
        minutes,
        seen,
        ...(flowing?.value != null && { pressure: flowing.value, unit: flowing.unit }),
      },
    });
    go();
  };
  return (
    <Screen
      title={words.dripsTitle}
      subtitle={
        flowing?.value != null
          ? `${words.atPressure.toLowerCase()} ${flowing.raw} ${flowing.unit}`
          : undefined
      }
      ticks={<VisitTicks steps={steps} here="drips" />}
      back={undoPress(open)}
      middle={photoPress(open, "drips")}
      next={{ label: words.noneSeen, hint, onPress: () => answer("none") }}
    >
      <Band tint>
        <p>{words.dripsText}</p>
      </Band>
      <AmountEntry
        label={words.minutes}
        unit="min"
        value={minutes}
        decimalSign={decimalSignOf(open.live.snapshot().book.settings.get("settings"))}
        onChange={setMinutes}
      />
      <button
        type="button"
        className="choice"
        aria-pressed={given?.seen === "some"}
        onClick={() => answer("some")}
      >
        {words.someSeen}
      </button>
      <p className="band" role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </Screen>
  );
}
