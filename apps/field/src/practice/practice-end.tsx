import type { Practice, PracticeEntry } from "@tapside/diagnosis";
import { useEffect, useState } from "react";
import { causeWorker } from "../cause/use-diagnosis.ts";
import { causeWords, practiceWords as words } from "../cause/words.ts";
import type { CauseAsked, CauseTold } from "../cause/worker-asks.ts";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { messages } from "../words/messages.ts";

interface PracticeEndProps {
  readonly start: Practice;
  readonly end: Practice;
  readonly onAgain: () => void;
}

/** What it was, the technician's log, and beside it what the planner would have done. */
export function PracticeEnd({ start, end, onAgain }: PracticeEndProps) {
  const planned = usePlanned(start);
  useEffect(() => {
    window.scrollTo(0, 0);
  }, []);
  return (
    <Screen
      title={words.whatItWas}
      subtitle={words.simulated}
      back={{ label: words.more, to: "/more" }}
      next={{ label: words.again, onPress: onAgain }}
    >
      {start.causes.map((cause) => (
        <Band heavy key={cause}>
          <span className="row">
            <span className="name">{causeWords.causes[cause]}</span>
            <strong>{end.causes.includes(cause) ? words.stillThere : words.putRight}</strong>
          </span>
        </Band>
      ))}
      <Log who={words.you} run={end} />
      {planned ? <Log who={words.planner} run={planned} /> : <Band tint>{causeWords.thinking}</Band>}
      <Band tint>
        <p>{messages.localCode}</p>
      </Band>
    </Screen>
  );
}

/** The planner's run on the same unit, from the worker. */
function usePlanned(start: Practice) {
  const [run, setRun] = useState<Practice>();
  useEffect(() => {
    const key = `planner ${start.seed}`;
    const listen = ({ data }: MessageEvent<CauseTold>) => {
      if (data.kind === "planned" && data.key === key) setRun(data.run);
    };
    const asked: CauseAsked = { kind: "planner", key, practice: start };
    causeWorker().addEventListener("message", listen);
    causeWorker().postMessage(asked);
    return () => causeWorker().removeEventListener("message", listen);
  }, [start]);
  return run;
}

function Log({ who, run }: { who: string; run: Practice }) {
  return (
    <section aria-label={who}>
      <Band tint>
        <span className="row">
          <h2>{who}</h2>
          <span>{causeWords.minutes(run.minutes)}</span>
        </span>
      </Band>
      <Band>
        {run.log.length === 0 ? <p className="note">{words.didNothing}</p> : null}
        {run.log.map((entry, at) => (
          <Entry key={at} entry={entry} />
        ))}
      </Band>
    </section>
  );
}

function Entry({ entry }: { entry: PracticeEntry }) {
  if (entry.kind === "repair")
    return (
      <p>
        <strong>{causeWords.putRightOf(causeWords.causes[entry.cause])}</strong>
        {`, ${causeWords.minutes(entry.minutes)}: ${entry.helped ? words.helped : words.notHelped}`}
      </p>
    );
  const shown = Object.entries(entry.shown).map(([sign, value]) =>
    causeWords.signText(sign as keyof typeof entry.shown, value as number),
  );
  return (
    <p>
      {causeWords.tests[entry.test]}, {causeWords.minutes(entry.minutes)}: {shown.join(", ")}
    </p>
  );
}
