import {
  CAUSE_IDS,
  type CauseId,
  countsInBook,
  foundInBook,
  frequencies,
  USUAL_WORTH,
  withFound,
} from "@tapside/diagnosis";
import { causeWords as words } from "../cause/words.ts";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords } from "../words/book.ts";
import { undoOrBack } from "./setup-keys.ts";

const WORTH_STEP = 20;

/** How often the company found each cause: a versioned record that replaces the assumed frequencies bit by bit. */
export default function CountsScreen() {
  const { live, snapshot } = useBook();
  const kept = countsInBook(snapshot.book.causeCounts);
  const shares = frequencies(kept);
  const assumedWorth = kept?.assumedWorth ?? USUAL_WORTH;
  const write = (found: Readonly<Partial<Record<CauseId, number>>>, worth: number) => {
    const asOf = todayIso();
    const version = kept?.asOf === asOf ? kept.version : (kept?.version ?? 0) + 1;
    void live.write("causeCounts", `causeCounts:${version}`, { version, asOf, found, assumedWorth: worth });
  };
  const change = (cause: CauseId, by: number) => {
    const found = { ...kept?.found, [cause]: Math.max(0, (kept?.found[cause] ?? 0) + by) };
    write(found, assumedWorth);
  };
  const inVisits = foundInBook(snapshot.book.visit.values());
  const notCounted = CAUSE_IDS.filter((id) => (inVisits[id] ?? 0) > (kept?.found[id] ?? 0));
  const changeWorth = (by: number) => write({ ...kept?.found }, Math.max(0, assumedWorth + by));
  return (
    <Screen
      title={words.counts}
      subtitle={kept ? words.countsVersion(kept.version, kept.asOf) : words.noCounts}
      back={undoOrBack(live, "/more")}
      next={{ label: bookWords.back, to: "/more" }}
    >
      <Band tint>{words.countsHint}</Band>
      {notCounted.length > 0 ? (
        <Band heavy press={{ onPress: () => write(withFound({ ...kept?.found }, inVisits), assumedWorth) }}>
          <strong>{words.foundInVisits}</strong>
          <p>{notCounted.map((id) => `${words.causes[id]}: ${inVisits[id]}`).join(", ")}</p>
          <p className="note">{words.takeOver}</p>
        </Band>
      ) : null}
      <Steps name={words.assumedWorth(assumedWorth)} note="" step={WORTH_STEP} onStep={changeWorth} />
      {CAUSE_IDS.map((cause, i) => (
        <Steps
          key={cause}
          name={words.causes[cause]}
          note={words.foundShare(kept?.found[cause] ?? 0, words.percent(shares[i]!))}
          step={1}
          onStep={(by) => change(cause, by)}
        />
      ))}
    </Screen>
  );
}

interface StepsProps {
  readonly name: string;
  readonly note: string;
  readonly step: number;
  readonly onStep: (by: number) => void;
}

const Steps = ({ name, note, step, onStep }: StepsProps) => (
  // biome-ignore lint/a11y/useSemanticElements: a legend cannot stand beside the keys of its fieldset
  <div role="group" className="band stepper" aria-label={[name, note].filter(Boolean).join(": ")}>
    <span aria-hidden="true">
      {name}
      <span className="note below">{note}</span>
    </span>
    <button type="button" aria-label={`−${step} ${name}`} onClick={() => onStep(-step)}>
      −{step}
    </button>
    <button type="button" aria-label={`+${step} ${name}`} onClick={() => onStep(step)}>
      +{step}
    </button>
  </div>
);
