import type { UnitAsRead } from "@tapside/assessment";
import { converted, missing, type Outcome } from "@tapside/quantities";
import type { UnitFile } from "@tapside/records";
import {
  type HighestRecovery,
  type Interval,
  type Restrictor,
  type RestrictorAnswer,
  restrictorLPerH,
  type Season,
  usualRating,
} from "@tapside/reverse-osmosis";
import { formatRange, inSign } from "@tapside/words";
import { useDeferredValue, useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { whyNot } from "../screens/why-not.ts";
import { inDigits } from "../words/in-digits.ts";
import { messages } from "../words/messages.ts";
import { feedIn, type Inhibitor, inhibitorOf, restrictorWanted, type Wanted } from "./restrictor-wanted.ts";
import { seasonsOf } from "./seasons-of.ts";
import { Stepper } from "./stepper.tsx";
import { tryWords as words } from "./words.ts";

const NO_WATER = { winter: missing("feedTds"), summer: missing("feedTds") } as const;
const SEASONS: readonly Season[] = ["winter", "summer"];
const RECOVERY = { first: 25, low: 5, high: 75, step: 5 } as const;
const WATER_C = { low: 1, high: 40 } as const;

const within = (value: number, { low, high }: { readonly low: number; readonly high: number }) =>
  Math.min(high, Math.max(low, value));
const percent = (of: Interval) =>
  `${formatRange({ low: 100 * of.low, high: 100 * of.high }, messages.decimalSign)}\u00a0%`;
/** Two figures: restrictors are made no finer. */
const mLPerMin = (lPerH: number) => inDigits((lPerH * 1000) / 60, 2);

interface RecoveryWantedProps {
  readonly file: UnitFile;
  /** The restrictor that is there. */
  readonly own: Restrictor;
  readonly tried: UnitAsRead;
}

/** Which restrictor gives a wanted recovery, winter and summer, without laying down scale. */
export function RecoveryWanted({ file, own, tried }: RecoveryWantedProps) {
  const [recovery, setRecovery] = useState<number>(RECOVERY.first);
  const [seasons, setSeasons] = useState(() => seasonsOf(file));
  const feed = useMemo(
    () => ({ winter: feedIn(file, seasons.winter), summer: feedIn(file, seasons.summer) }),
    [file, seasons],
  );
  // The thumb goes first: a step is shown at once, its answer follows.
  const asked = useDeferredValue(
    useMemo(
      () => ({ tried, feed, wanted: { recovery: recovery / 100, seasons } }),
      [tried, feed, recovery, seasons],
    ),
  );
  const inhibitor = useMemo(() => inhibitorOf(file), [file]);
  const answer = useMemo(
    () => restrictorWanted(asked.tried, asked.feed, asked.wanted, inhibitor),
    [asked, inhibitor],
  );
  const regardless = useMemo(() => restrictorWanted(asked.tried, NO_WATER, asked.wanted), [asked]);
  return (
    <>
      <Stepper
        label={words.wantedRecovery}
        said={`${recovery}\u00a0%`}
        onStep={(way) => setRecovery(within(recovery + way * RECOVERY.step, RECOVERY))}
      />
      {SEASONS.map((season) => (
        <Stepper
          key={season}
          label={words.seasons[season]}
          said={`${seasons[season]} °C`}
          onStep={(way) => setSeasons({ ...seasons, [season]: within(seasons[season] + way, WATER_C) })}
        />
      ))}
      <div aria-live="polite">
        <Answer
          answer={inhibitor === "notSaid" ? asWanted(regardless, answer) : answer}
          regardless={regardless}
          own={own}
          wanted={asked.wanted}
          inhibitor={inhibitor}
        />
      </div>
    </>
  );
}

interface AnswerProps {
  readonly answer: Outcome<RestrictorAnswer>;
  /** As wanted, whatever settles. */
  readonly regardless: Outcome<RestrictorAnswer>;
  readonly own: Restrictor;
  readonly wanted: Wanted;
  readonly inhibitor: Inhibitor;
}

/** The restrictor as wanted, beside where scale would begin without an inhibitor. */
const asWanted = (
  regardless: Outcome<RestrictorAnswer>,
  without: Outcome<RestrictorAnswer>,
): Outcome<RestrictorAnswer> =>
  regardless.kind === "known" && without.kind === "known"
    ? { ...regardless, value: { ...regardless.value, scale: without.value.scale } }
    : regardless;

function Answer({ answer, regardless, own, wanted, inhibitor }: AnswerProps) {
  if (answer.kind !== "known") return <Band>{whyNot(answer)}</Band>;
  const { ratedLPerH, ratedKPa, recovery, scale, setBy } = answer.value;
  const nowLPerH = restrictorLPerH(own, ratedKPa, usualRating.temperatureC);
  const psi = converted(ratedKPa, "kPa", "psi").toFixed(0);
  return (
    <Band>
      <span className="row answer">
        <span>{words.restrictorAt(psi)}</span>
        <strong>
          {words.instead(words.mLPerMin(mLPerMin(ratedLPerH)), words.mLPerMin(mLPerMin(nowLPerH)))}
        </strong>
      </span>
      {SEASONS.map((season) => (
        <span className="row answer" key={season}>
          <span>{words.recoveryIn(words.seasons[season], `${wanted.seasons[season]} °C`)}</span>
          <strong>{percent(recovery[season])}</strong>
        </span>
      ))}
      {setBy === "scale" && regardless.kind === "known" ? (
        <p>
          {words.heldByScale(
            `${Math.round(100 * wanted.recovery)}\u00a0%`,
            words.mLPerMin(mLPerMin(regardless.value.ratedLPerH)),
          )}
        </p>
      ) : null}
      {inhibitor === "none" ? null : <p>{inhibitorText(inhibitor)}</p>}
      {SEASONS.map((season) => (
        <p key={season} className="note">
          {`${words.seasons[season]}: ${scaleText(scale[season])}`}
        </p>
      ))}
      <p className="note">{words.restrictorCare}</p>
    </Band>
  );
}

const inhibitorText = (inhibitor: Exclude<Inhibitor, "none">): string =>
  inhibitor === "notSaid"
    ? words.inhibitorNotSaid
    : words.inhibitorHolds(inSign(String(inhibitor.calciteIndex), messages.decimalSign));

function scaleText(scale: Outcome<HighestRecovery>): string {
  if (scale.kind !== "known") return whyNot(scale);
  const upTo = `${Math.round(100 * scale.value.recovery)}\u00a0%`;
  return scale.value.mineral
    ? words.scaleFrom(words.minerals[scale.value.mineral], upTo)
    : words.noScale(upTo);
}
