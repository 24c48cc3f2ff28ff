import type { Practice, PracticeEntry } from "@tapside/diagnosis";
import { useEffect, useState } from "react";
import { causeWorker } from "../cause/use-diagnosis.ts";
import { causeWords, practiceWords as words } from "../cause/words.ts";
import type { CauseAsked, CauseTold } from "../cause/worker-asks.ts";
import { Band } from "../look/band.tsx";
import { todayIso } from "../look/fields/date-field.tsx";
import { Screen } from "../look/screen.tsx";
import { day } from "../screens/day.ts";
import { handOverText } from "../store/hand-over-text.ts";
import { useBook } from "../store/use-book.ts";
import { messages } from "../words/messages.ts";
import { entryText, practiceText } from "./practice-text.ts";

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
      {planned ? <HandOver start={start} end={end} planned={planned} /> : null}
      <Band tint>
        <p>{messages.localCode}</p>
      </Band>
    </Screen>
  );
}

interface Runs {
  readonly start: Practice;
  readonly end: Practice;
  readonly planned: Practice;
}

/** The log as a text for whoever keeps the training records: nothing of it is kept here. */
function HandOver({ start, end, planned }: Runs) {
  const { live } = useBook();
  const [said, setSaid] = useState("");
  const who = live.snapshot().book.settings.get("settings")?.technician ?? words.you;
  const send = async () => {
    const text = practiceText({ who, day: day(todayIso()), start, end, planned });
    const how = await handOverText(text);
    setSaid({ shared: words.logShared, copied: words.logCopied, calledOff: "", neither: text }[how]);
  };
  return (
    <>
      <Band press={{ onPress: () => void send() }}>
        <span className="name">{words.handOverLog}</span>
      </Band>
      <p className="band" role="status">
        {said}
      </p>
    </>
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
  const { what, rest } = entryText(entry);
  return (
    <p>
      {entry.kind === "repair" ? <strong>{what}</strong> : what}
      {rest}
    </p>
  );
}
