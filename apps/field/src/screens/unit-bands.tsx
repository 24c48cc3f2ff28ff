import { type Assessment, assess, type Figure } from "@tapside/assessment";
import { formatUncertain, known, type Outcome } from "@tapside/quantities";
import { staysBypassed, type UnitFile } from "@tapside/records";
import { formatFigure, inSign } from "@tapside/words";
import { useMemo } from "react";
import { Band } from "../look/band.tsx";
import { useBook } from "../store/use-book.ts";
import { contextNow } from "../visit/context-now.ts";
import { Numeral } from "../visit/numeral.tsx";
import { bookWords as words } from "../words/book.ts";
import { messages } from "../words/messages.ts";
import { UnitLife } from "./unit-life.tsx";
import { UnitWater } from "./unit-water.tsx";
import { whyNot } from "./why-not.ts";

/** Five numbers along the water, each in the band where it is true; every band opens what is known of its place. */
export function UnitBands({ file, visitId }: { file: UnitFile; visitId: string }) {
  const { snapshot } = useBook();
  const assessment = useMemo(
    () => assess(file, visitId, contextNow(snapshot.book)),
    [file, visitId, snapshot.book],
  );
  const visit = file.visits.find((one) => one.id === visitId)!;
  const feed = visit.readings.asFound.feedTds;
  const now = newest(assessment);
  const limit = assessment.findings.find((finding) => finding.id === "delivered" && finding.limit);
  const bypassed = staysBypassed(visit);
  const opens = (band: string) => ({ to: `/unit/${file.unit.id}/at/${band}` });
  return (
    <div className="along-water unit-bands">
      <UnitWater file={file} visit={visit} assessment={assessment} />
      <Band water tint press={opens("tap")}>
        <span className="row">
          <span>
            {feed ? `${words.tap}, ${inSign(feed.raw, messages.decimalSign)} ${feed.unit}` : words.tap}
          </span>
          {file.point.bypassFitted ? <span>{words.bypass}</span> : null}
        </span>
      </Band>
      <Band water press={opens("cartridge")}>
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
      <Band water tint press={opens("shutOff")}>
        {words.shutOff}
      </Band>
      <Band water id="element-band" press={opens("element")}>
        <span className="two">
          <NumberOf title={words.correctedFlow} figure={inPercent(now.flowRatio)} unit={words.percentNew} />
          <NumberOf title={words.saltPassage} figure={now.saltRatio} unit={words.timesNew} />
        </span>
        <UnitLife assessment={assessment} visitId={visitId} />
        <span className="drain-text">
          {now.drainFlow.kind === "known"
            ? words.drain(
                `${formatUncertain(now.drainFlow.value, messages.decimalSign).text} ${now.drainFlow.value.unit}`,
              )
            : ""}
        </span>
      </Band>
      <Band water press={opens("tank")}>
        <NumberOf
          title={usableTitle(file)}
          figure={now.usableLitres}
          unit={usableUnit(now.usableLitresAtBest)}
        />
      </Band>
      <Band water tint press={opens("postFilter")}>
        {words.postFilter}
      </Band>
      <Band water heavy press={opens("outlet")}>
        <NumberOf
          title={words.delivered}
          figure={now.deliveredTds}
          unit={deliveredUnit(now.deliveredTds)}
          limit={
            limit?.limit?.high !== undefined
              ? words.limit(`${limit.limit.high} ${limit.limit.unit}`)
              : words.noLimit
          }
        />
      </Band>
      <Band press={{ to: `/unit/${file.unit.id}/due` }}>
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

const inPercent = (ratio: Outcome<Figure>): Outcome<Figure> =>
  ratio.kind === "known"
    ? known({ ...ratio.value, value: 100 * ratio.value.value, u: 100 * ratio.value.u })
    : ratio;

const whole = (value: number) => inSign(value.toFixed(value > 0 && value < 10 ? 1 : 0), messages.decimalSign);

const PSI_KPA = 6.894757;

function usableTitle(file: UnitFile): string {
  const lowest = Math.max(...file.appliances.map((one) => one.minimumPressureKPaGauge ?? 0), 0);
  return lowest > 0 ? words.usableAbove(`${(lowest / PSI_KPA).toFixed(0)} psi`) : words.usable;
}

const usableUnit = (best: Outcome<Figure>) =>
  best.kind === "known" ? words.of(formatUncertain(best.value, messages.decimalSign).text) : "L";

const deliveredUnit = (figure: Outcome<Figure>) =>
  figure.kind === "known" ? [figure.value.unit, figure.value.scale].filter(Boolean).join(", ") : "";

interface NumberOfProps {
  readonly title: string;
  readonly figure: Outcome<Figure>;
  readonly unit: string;
  /** What it is held against; such a number stands taller. */
  readonly limit?: string;
}

function NumberOf({ title, figure, unit, limit }: NumberOfProps) {
  const text = figure.kind === "known" ? formatFigure(figure.value, messages.decimalSign) : undefined;
  return (
    <span className="number-of">
      <span>{title}</span>
      {text ? (
        <span className="with-u">
          <Numeral text={text.text} height={limit ? 58 : 40} name={`${text.text} ${unit}`} />
          <span>
            {unit}
            {text.uText ? (
              <>
                {limit ? " " : <br />}
                <span className="together">± {text.uText}</span>
              </>
            ) : null}
            {limit ? <span className="note below">{limit}</span> : null}
          </span>
        </span>
      ) : (
        <>
          <span className="note below">{whyNot(figure)}</span>
          {limit ? <span className="note below">{limit}</span> : null}
        </>
      )}
    </span>
  );
}
