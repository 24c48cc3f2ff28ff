import { type Assessment, assess, type Figure } from "@tapside/assessment";
import { formatUncertain, type Outcome } from "@tapside/quantities";
import { type UnitFile, unitFile, type VisitKind } from "@tapside/records";
import { en } from "@tapside/words";
import { useMemo, useState } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { tryWords } from "../try/words.ts";
import { contextNow } from "../visit/context-now.ts";
import { Numeral } from "../visit/numeral.tsx";
import { startVisit } from "../visit/start-visit.ts";
import { bookWords as words } from "../words/book.ts";
import { day } from "./day.ts";
import { Gone } from "./gone.tsx";
import { UnitLife } from "./unit-life.tsx";
import { UnitWater } from "./unit-water.tsx";
import { whyNot } from "./why-not.ts";

/** A unit's first screen: five numbers along the water, one line, the life strip. */
export function UnitScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const [choosing, setChoosing] = useState(false);
  const { book } = snapshot;
  const file = useMemo(() => unitFile(book, id), [book, id]);
  if (!file) return <Gone />;
  const last = file.visits.at(-1);
  const open = last && !last.closed ? last : undefined;
  const judged =
    [...file.visits]
      .reverse()
      .find((visit) => visit.readings.asFound.feedTds || visit.readings.asFound.permeateTds) ?? last;
  const start = (kind: VisitKind) => navigate(`/visit/${startVisit(live, id, kind)}/ask`);
  return (
    <Screen
      title={[file.site.name, file.unit.name].filter(Boolean).join(", ")}
      subtitle={[
        ...file.appliances.map((one) => one.name),
        last ? words.lastVisit(day(last.startedAt)) : words.noVisit,
      ].join(" · ")}
      back={{ label: words.book, to: "/" }}
      middle={{ label: words.edit, to: `/unit/${id}/edit`, picture: <span /> }}
      next={
        open
          ? { label: words.goOn, hint: words.openVisit, to: `/visit/${open.id}` }
          : { label: words.startVisit, hint: words.annual, onPress: () => start("annual") }
      }
    >
      <Band tint press={{ to: open ? `/visit/${open.id}/expected` : `/unit/${id}/expected` }}>
        <span className="name">{words.expectedToday}</span>
      </Band>
      <Band tint press={{ to: `/unit/${id}/try` }}>
        <span className="name">{tryWords.open}</span>
      </Band>
      {judged ? <JudgedUnit file={file} visitId={judged.id} /> : <UnjudgedUnit file={file} />}
      {open ? null : (
        <>
          <Band tint press={{ onPress: () => setChoosing(!choosing) }}>
            {words.otherKind} {choosing ? "▴" : "▾"}
          </Band>
          {choosing
            ? (Object.keys(words.kinds) as VisitKind[]).map((kind) => (
                <button type="button" key={kind} className="choice" onClick={() => start(kind)}>
                  {words.kinds[kind]}
                </button>
              ))
            : null}
        </>
      )}
      <Band tint>
        <strong>{words.history}</strong>
      </Band>
      {[...file.visits].reverse().map((visit) => (
        <Band
          key={visit.id}
          press={{ to: visit.closed ? `/visit/${visit.id}/record` : `/visit/${visit.id}` }}
        >
          <span className="row">
            <span>{day(visit.startedAt)}</span>
            <span className="note">{words.kinds[visit.kind ?? "annual"]}</span>
          </span>
        </Band>
      ))}
      {file.openPoints.map((point) => (
        <Band key={point.id} press={{ to: open ? `/visit/${open.id}/points` : `/unit/${id}/points` }}>
          {en.openPoint(point)}
        </Band>
      ))}
    </Screen>
  );
}

function UnjudgedUnit({ file }: { file: UnitFile }) {
  return (
    <>
      <Band tint>{words.tap}</Band>
      <Band>
        <p>{words.noVisit}</p>
        <p className="note">{file.point.name}</p>
      </Band>
    </>
  );
}

function JudgedUnit({ file, visitId }: { file: UnitFile; visitId: string }) {
  const { snapshot } = useBook();
  const assessment = useMemo(
    () => assess(file, visitId, contextNow(snapshot.book)),
    [file, visitId, snapshot.book],
  );
  const visit = file.visits.find((one) => one.id === visitId)!;
  const feed = visit.readings.asFound.feedTds;
  const now = newest(assessment);
  const limit = assessment.findings.find((finding) => finding.id === "delivered" && finding.limit);
  const bypassed = visit.answers.inUse === "bypassed" && visit.answers.bypass?.decision !== "putInUse";
  return (
    <div className="along-water unit-bands">
      <UnitWater file={file} visit={visit} assessment={assessment} />
      <Band water tint>
        <span className="row">
          <span>{feed ? `${words.tap}, ${feed.raw} ${feed.unit}` : words.tap}</span>
          {file.point.bypassFitted ? <span>{words.bypass}</span> : null}
        </span>
      </Band>
      <Band water>
        <p>{words.carbonLeft}</p>
        {now.carbonLeft.kind === "known" ? (
          <Numeral
            hollow
            height={40}
            text={`${whole(Math.max(0, now.carbonLeft.value.lowM3))}–${whole(Math.max(0, now.carbonLeft.value.highM3))}`}
            unit="m³"
          />
        ) : (
          <p className="note">{whyNot(now.carbonLeft)}</p>
        )}
      </Band>
      <Band water tint>
        {words.shutOff}
      </Band>
      <Band water id="element-band">
        <div className="two">
          <NumberOf title={words.correctedFlow} figure={now.flowRatio} unit="× new" />
          <NumberOf title={words.saltPassage} figure={now.saltRatio} unit="× new" />
        </div>
        <UnitLife assessment={assessment} visitId={visitId} />
        <p className="drain-text">
          {now.drainFlow.kind === "known"
            ? words.drain(`${formatUncertain(now.drainFlow.value).text} ${now.drainFlow.value.unit}`)
            : ""}
        </p>
      </Band>
      <Band water>
        <NumberOf
          title={usableTitle(file)}
          figure={now.usableLitres}
          unit={usableUnit(now.usableLitresAtBest)}
        />
      </Band>
      <Band water tint>
        {words.postFilter}
      </Band>
      <Band water heavy>
        <NumberOf
          title={words.delivered}
          figure={now.deliveredTds}
          unit={deliveredUnit(now.deliveredTds)}
          tall
        />
        <p className="note">
          {limit?.limit?.high !== undefined
            ? words.limit(`${limit.limit.high} ${limit.limit.unit}`)
            : words.noLimit}
        </p>
      </Band>
      <Band>
        <strong>
          {[
            file.point.bypassFitted ? (bypassed ? words.bypassOpen : words.bypassShut) : words.noBypass,
            file.openPoints.length > 0 ? words.openPoints(file.openPoints.length) : "",
            words.carry(assessment.tasks.filter((task) => task.part).length),
          ]
            .filter(Boolean)
            .join(" · ")}
        </strong>
      </Band>
    </div>
  );
}

/** As left where it was read again, else as found. */
function newest(assessment: Assessment): Assessment["figures"]["asFound"] {
  const { asFound, asLeft } = assessment.figures;
  const names = Object.keys(asFound) as (keyof typeof asFound)[];
  return Object.fromEntries(
    names.map((name) => [name, asLeft[name].kind === "known" ? asLeft[name] : asFound[name]]),
  ) as unknown as typeof asFound;
}

const whole = (value: number) => value.toFixed(value > 0 && value < 10 ? 1 : 0);

function usableTitle(file: UnitFile): string {
  const lowest = Math.max(...file.appliances.map((one) => one.minimumPressureKPaGauge ?? 0), 0);
  return lowest > 0 ? words.usableAbove(`${(lowest / 6.894757).toFixed(0)} psi`) : words.usable;
}

const usableUnit = (best: Outcome<Figure>) =>
  best.kind === "known" ? words.of(formatUncertain(best.value).text) : "L";

const deliveredUnit = (figure: Outcome<Figure>) =>
  figure.kind === "known" ? [figure.value.unit, figure.value.scale].filter(Boolean).join(", ") : "";

function NumberOf({
  title,
  figure,
  unit,
  tall,
}: {
  title: string;
  figure: Outcome<Figure>;
  unit: string;
  tall?: boolean;
}) {
  const text = figure.kind === "known" ? formatUncertain(figure.value) : undefined;
  return (
    <div>
      <p>{title}</p>
      {text ? (
        <span className="with-u">
          <Numeral text={text.text} height={tall ? 58 : 40} name={`${text.text} ${unit}`} />
          <span>
            {unit}
            {text.uText ? (
              <>
                <br />± {text.uText}
              </>
            ) : null}
          </span>
        </span>
      ) : (
        <p className="note">{whyNot(figure)}</p>
      )}
    </div>
  );
}
