import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { photoPress } from "./photo.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

/** The first question: does the water go through the unit at all? */
export function Ask({ open }: { open: OpenVisit }) {
  const { to, hint, steps, go } = useGoOn(open, "ask");
  const answer = (inUse: "inUse" | "bypassed") => {
    open.write({ "answer:inUse": inUse });
    go();
  };
  const given = open.visit.answers.inUse;
  return (
    <Screen
      title={words.titles.ask!}
      subtitle={[open.file.site.askName, open.file.site.askRole].filter(Boolean).join(", ")}
      ticks={<VisitTicks steps={steps} here="ask" />}
      back={undoPress(open)}
      middle={photoPress(open, "asFound")}
      next={
        given
          ? { label: words.next, hint, to }
          : { label: words.inUse, hint: words.inUseHint, onPress: () => answer("inUse") }
      }
    >
      <Band tint>
        <p>{words.askAbout}</p>
        <p className="note">{messages.caution("workingAlone")}</p>
      </Band>
      <button
        type="button"
        className="choice"
        aria-pressed={given === "inUse"}
        onClick={() => answer("inUse")}
      >
        <span>
          {words.inUse}
          <span className="note">{words.inUseHint}</span>
        </span>
      </button>
      <button
        type="button"
        className="choice"
        aria-pressed={given === "bypassed"}
        onClick={() => answer("bypassed")}
      >
        <span>
          {words.bypassed}
          <span className="note">{words.bypassedHint}</span>
        </span>
      </button>
    </Screen>
  );
}
