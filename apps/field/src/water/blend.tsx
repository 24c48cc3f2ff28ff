import { answerLeftOpen, productWater, USUAL_PASSAGE } from "@tapside/assessment";
import { blendBar } from "@tapside/pictures";
import { allKnown, known, mapOutcome, type Outcome } from "@tapside/quantities";
import {
  type BlendAnswer,
  type BlendPair,
  blendedStream,
  blendRange,
  type LimitAnswer,
  middleWater,
  remineralise,
  type Stream,
  speciate,
  suits,
  sureBlendRange,
  type WaterAnalysis,
} from "@tapside/water";
import { inSign } from "@tapside/words";
import { useId, useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import { messages } from "../words/messages.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import type { SiteWater } from "./site-water.ts";
import { waterPageWords as words } from "./words.ts";

/** Waters the blends are tried on: enough to see how far the readings leave them apart, few enough for a phone. */
const TRIED = 9;

/** Usual approach of a small calcite cartridge to saturation. Common practice, no source. */
const APPROACH = 0.6;

const percent = (fraction: number) => Math.round(100 * fraction);

interface BlendProps {
  readonly samples: readonly WaterAnalysis[];
  readonly site: SiteWater;
}

/** Streams and limits of the site, solved once for the samples at hand. */
function solved(samples: readonly WaterAnalysis[], site: SiteWater, contactor: boolean) {
  const middle = middleWater(samples);
  if (!middle) return undefined;
  const passage = site.passage ?? USUAL_PASSAGE;
  const stride = Math.max(1, Math.floor(samples.length / TRIED));
  const possible = samples
    .filter((_, i) => i % stride === 0)
    .slice(0, TRIED)
    .flatMap((sample): BlendPair[] => {
      const pair = bothStreams(sample, passage);
      return pair.kind === "known" ? [{ feed: pair.value.feed, permeate: pair.value.product }] : [];
    });
  const chlorine = site.chlorineMgPerL;
  const options = {
    ...(chlorine !== undefined && { totalChlorineMgPerL: chlorine, permeateChlorineMgPerL: chlorine }),
    ...(contactor && {
      after: (water: Parameters<typeof remineralise>[0]) =>
        mapOutcome(remineralise(water, APPROACH), (done) => known(done.water)),
    }),
  };
  return { streams: bothStreams(middle, passage), possible, options };
}

function bothStreams(water: WaterAnalysis, passage: number) {
  const feed = speciate(water);
  return allKnown({ feed, product: mapOutcome(feed, (solvedFeed) => productWater(solvedFeed, passage)) });
}

const limitsAt = (end: "strictest" | "loosest", { limits }: SiteWater) =>
  limits.flatMap(({ [end]: limit }) => limit ?? []);

/** Every limit at one blend, by the same rule as the findings of a visit: what the record leaves open is not told. */
function answersAt(stream: Stream, site: SiteWater): Outcome<readonly LimitAnswer[]> {
  const all = [...limitsAt("strictest", site), ...limitsAt("loosest", site)];
  return mapOutcome(suits([stream.water], all, stream), (answers) =>
    known(
      site.limits.map((one) =>
        answerLeftOpen(one, (limit) => answers.find((answer) => answer.limit === limit)!),
      ),
    ),
  );
}

/** The blend valve: each limit over the blends that keep it, the chosen blend, and what it keeps there. */
export function Blend({ samples, site }: BlendProps) {
  const theme = useTheme();
  const id = useId();
  const [chosen, setChosen] = useState(0);
  const [contactor, setContactor] = useState(site.remineraliser);
  const base = useMemo(() => solved(samples, site, contactor), [samples, site, contactor]);
  const range = useMemo(
    (): Outcome<BlendAnswer> | undefined =>
      base &&
      mapOutcome(base.streams, ({ feed, product }) =>
        blendRange(feed, product, limitsAt("loosest", site), base.options),
      ),
    [base, site],
  );
  const sure = useMemo(
    () => base && sureBlendRange(base.possible, limitsAt("strictest", site), base.options),
    [base, site],
  );
  if (!base || !range) return null;
  if (site.limits.length === 0)
    return (
      <Band>
        <p className="note">{words.noLimits}</p>
      </Band>
    );
  if (range.kind !== "known")
    return (
      <Band>
        <p className="note">{sayWhyNot(range)}</p>
      </Band>
    );
  const here = mapOutcome(base.streams, ({ feed, product }) =>
    mapOutcome(blendedStream(feed, product, chosen, base.options), (stream) => answersAt(stream, site)),
  );
  const certain = sure?.kind === "known" ? sure.value : undefined;
  const answer = certain?.kind === "range" ? certain : range.value;
  const said = sentences(answer, certain === answer);
  return (
    <>
      <Band>
        {said.map((line) => (
          <p key={line}>
            <strong>{line}</strong>
          </p>
        ))}
        {site.passage === undefined ? <p className="note">{words.assumedPassage}</p> : null}
      </Band>
      <div className="band blend">
        <Picture
          svg={blendBar({
            theme,
            limits: answer.byLimit.map(({ limit, kept }) => ({
              name: `${messages.water.name(limit.property)}, ${limit.appliance ?? ""}`,
              ...(kept && { kept }),
            })),
            ...(answer.kind === "range" && {
              all: [answer.lowFeedFraction, answer.highFeedFraction] as const,
            }),
            chosen,
            description: said.join(" "),
          })}
        />
        <p>{words.every}</p>
        <input
          id={id}
          type="range"
          min={0}
          max={100}
          step={1}
          value={percent(chosen)}
          aria-label={words.blend}
          aria-valuetext={words.blendOf(percent(chosen))}
          onChange={(event) => setChosen(Number(event.target.value) / 100)}
        />
        <label htmlFor={id}>{words.blendOf(percent(chosen))}</label>
      </div>
      <button
        type="button"
        className="choice"
        aria-pressed={contactor}
        onClick={() => setContactor(!contactor)}
      >
        {words.remineralised}
      </button>
      {here.kind === "known" ? <Answers answers={here.value} /> : null}
      <Band>
        <p className="note">{messages.water.guidance}</p>
      </Band>
    </>
  );
}

function sentences(answer: BlendAnswer, sure: boolean): readonly string[] {
  if (answer.kind === "range") {
    const [low, high] = [percent(answer.lowFeedFraction), percent(answer.highFeedFraction)];
    return [sure ? words.blendRange(low, high) : words.blendPerhaps(low, high)];
  }
  return [
    words.noBlend,
    ...answer.broken.map((limit) => words.never(messages.water.limit(limit))),
    ...answer.conflicts
      .slice(0, 3)
      .map(([a, b]) => words.against(messages.water.limit(a), messages.water.limit(b))),
  ];
}

const SIGN = { within: "●", outside: "▲", "too-close-to-say": "◐", "cannot-tell": "▨" } as const;

const two = (value: number) =>
  inSign(String(Number(value.toPrecision(value < 1 ? 1 : 2))), messages.decimalSign);

function Answers({ answers }: { answers: readonly LimitAnswer[] }) {
  return answers.map(({ limit, answer, values }, i) => (
    <Band key={i}>
      <span className="row">
        <span>
          <span aria-hidden="true">{SIGN[answer]}</span> {messages.water.name(limit.property)}
          {answer === "cannot-tell" ? "" : ` ${two(values[0] ?? 0)}`}
        </span>
        <strong>{messages.water.answer(answer)}</strong>
      </span>
      <p className="note">{messages.water.limit(limit)}</p>
    </Band>
  ));
}
