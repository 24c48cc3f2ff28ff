import type { Finding } from "@tapside/assessment";
import { findingMark } from "@tapside/pictures";
import { formatFigure, plainNumber } from "@tapside/words";
import { useState } from "react";
import { Band } from "../look/band.tsx";
import { Picture } from "../look/picture.tsx";
import { Screen } from "../look/screen.tsx";
import { useTheme } from "../look/use-theme.ts";
import { messages } from "../words/messages.ts";
import { undoPress, useGoOn } from "./go-on.ts";
import { Numeral } from "./numeral.tsx";
import { photoPress } from "./photo.tsx";
import type { OpenVisit } from "./use-visit.ts";
import { VisitTicks } from "./visit-ticks.tsx";
import { visitWords as words } from "./words.ts";

const isQuiet = (finding: Finding) => finding.verdict === "within" || finding.verdict === "information";
const LOUD_AT_LEAST = 6;

/** All findings on one upright limit line: left within, right outside, across too close to say. */
export function Judgement({ open }: { open: OpenVisit }) {
  const { to, hint, steps, next } = useGoOn(open, "judgement");
  const [all, setAll] = useState(false);
  const { findings, questions } = open.assessment;
  const phase = open.visit.readings.asLeft.permeateTds?.value != null ? "asLeft" : "asFound";
  const ofPhase = findings.filter((finding) => finding.phase === phase);
  const loud = ofPhase.filter((finding) => !isQuiet(finding));
  const quiet = ofPhase.filter(isQuiet);
  const shownQuiet = all ? quiet : quiet.slice(0, Math.max(0, LOUD_AT_LEAST - loud.length));
  const temperature = open.visit.readings.asFound.feedTemperature;
  return (
    <Screen
      title={`${messages.phases[phase]}${temperature?.value != null ? `, ${temperature.raw} ${temperature.unit}` : ""}`}
      ticks={<VisitTicks steps={steps} here="judgement" />}
      back={undoPress(open)}
      middle={photoPress(open, phase)}
      next={{
        label: next.id.startsWith("work:") ? hint : words.next,
        hint: next.id.startsWith("work:") ? workHint(open.assessment, next.id) : hint,
        to,
      }}
    >
      {questions.map((question) => (
        <Band tint key={question.id}>
          <strong>{words.questions}</strong>
          <p>{messages.question(question)}</p>
        </Band>
      ))}
      <div className="limit-head" aria-hidden="true">
        <span>{words.within}</span>
        <span>{words.outside}</span>
      </div>
      {[...loud, ...shownQuiet].map((finding) => (
        <FindingBand
          key={`${finding.phase}:${finding.id}:${finding.detail?.appliance ?? ""}`}
          finding={finding}
        />
      ))}
      {loud.some((finding) => finding.verdict === "outside") ? (
        <Band tint heavy press={{ to: `${open.base}/cause` }}>
          <span className="name">{words.findCause}</span>
        </Band>
      ) : null}
      {quiet.length > shownQuiet.length || all ? (
        <Band tint press={{ onPress: () => setAll(!all) }}>
          <span className="row">
            <span>{words.allWithin(quiet.length - (all ? 0 : shownQuiet.length))}</span>
            <span className="note">{all ? words.hide : words.show}</span>
          </span>
        </Band>
      ) : null}
    </Screen>
  );
}

/** Why the hands do it, or what they set it to. */
function workHint({ tasks, figures }: OpenVisit["assessment"], id: string): string {
  const task = tasks.find((one) => `work:${one.id}` === id);
  const best = figures.asFound.bestCharge;
  const usable = figures.asFound.usableLitresAtBest;
  if (task?.id !== "setAirCharge" || best.kind !== "known")
    return task ? messages.taskWhy(task) : words.cautions;
  const litres =
    usable.kind === "known" ? words.litresUsable(formatFigure(usable.value, messages.decimalSign).text) : "";
  return words.setTo(`${plainNumber(best.value.value, messages.decimalSign)} ${best.value.unit}`, litres);
}

/** A test that showed nothing is told as below its step. */
function shownFigure({ figure, rule }: Finding) {
  if (!figure) return undefined;
  if (rule === "not-detected")
    return { text: `<${plainNumber(2 * figure.value, messages.decimalSign)}`, uText: "" };
  return formatFigure(figure, messages.decimalSign);
}

/** One finding: what, verdict, number, limit with its source, and its mark on the line. */
function FindingBand({ finding }: { finding: Finding }) {
  const theme = useTheme();
  const text = messages.finding(finding);
  const figure = shownFigure(finding);
  const mark =
    finding.verdict === "cannotTell"
      ? { kind: "cannotTell" as const }
      : { kind: "distance" as const, d: finding.distance ?? 0 };
  return (
    <article className="band finding">
      <Picture className="finding-mark" svg={findingMark({ ...mark, theme, heightPx: 99 })} />
      <h2>
        <strong>{text.title}</strong>, {text.verdict}
      </h2>
      {figure ? (
        <p className="row figure">
          <Numeral text={figure.text} height={38} name={`${figure.text} ${finding.figure?.unit ?? ""}`} />
          <span>
            {figure.uText ? `± ${figure.uText} ` : ""}
            {messages.unit(finding.figure!.unit)}
          </span>
        </p>
      ) : null}
      {text.reason ? <p>{text.reason}</p> : null}
      <p className="note">{text.limit}</p>
    </article>
  );
}
