import type { Figure } from "@tapside/assessment";
import { formatFigure } from "@tapside/words";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { Numeral } from "./numeral.tsx";
import { photoPress } from "./photo.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

/** Nobody waits for a tank: the expected time, and whether its shut-off was seen. */
export function Leave({ open }: { open: OpenVisit }) {
  const { go, hint, steps } = useGoOn(open, "leave");
  const { asLeft, asFound } = open.assessment.figures;
  const hours = asLeft.fillingHours.kind === "known" ? asLeft.fillingHours : asFound.fillingHours;
  const given = open.visit.answers.filling?.state;
  const answer = (state: "seen" | "notSeen" | "reported") => {
    open.write({
      "answer:filling": { state, ...(hours.kind === "known" && { expectedHours: hours.value.value }) },
    });
    go();
  };
  return (
    <Screen
      title={words.titles.leave!}
      ticks={<VisitTicks steps={steps} here="leave" />}
      back={undoPress(open)}
      middle={photoPress(open, "asLeft")}
      next={{ label: words.notSeen, hint, onPress: () => answer("notSeen") }}
    >
      <Band>
        {hours.kind === "known" ? (
          <>
            <p>{words.expectedFilling}</p>
            <Expected figure={hours.value} />
          </>
        ) : (
          <p>{words.cannotTellHours}</p>
        )}
        <p className="note">{words.sixty}</p>
      </Band>
      {(["notSeen", "seen", "reported"] as const).map((state) => (
        <button
          type="button"
          key={state}
          className="choice"
          aria-pressed={given === state}
          onClick={() => answer(state)}
        >
          {words[state]}
        </button>
      ))}
      <Band press={{ to: `/unit/${open.file.unit.id}/kitchen/${open.visit.id}` }}>
        <span className="name">{officeWords.forKitchen}</span>
        <p className="note">{officeWords.forKitchenHint}</p>
      </Band>
    </Screen>
  );
}

function Expected({ figure }: { figure: Figure }) {
  const { text, uText } = formatFigure(figure, messages.decimalSign);
  return (
    <span className="with-u">
      <Numeral text={text} height={58} hollow name={words.hoursAbout(text, uText)} />
      <span>
        {words.hours}
        <br />± {uText}
      </span>
    </span>
  );
}
