import type { UnitAsRead } from "@tapside/assessment";
import { nowAndChanged } from "@tapside/pictures";
import type { Outcome } from "@tapside/quantities";
import {
  type Leak,
  type LeakyNight as Night,
  nightOfLeak,
  standingPressureKPaGauge,
} from "@tapside/reverse-osmosis";
import { inSign } from "@tapside/words";
import { useDeferredValue, useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import { whyNot } from "../screens/why-not.ts";
import { messages } from "../words/messages.ts";
import { short } from "./pictures.tsx";
import { Stepper } from "./stepper.tsx";
import { tryWords as words } from "./words.ts";

const PLACES = ["tap", "checkValve"] as const;
/** mL/min, from a drop every six seconds to a thin stream. */
const SIZES = [0.5, 1, 2, 3, 5, 10, 20, 50, 100, 200] as const;
/** Of a millilitre. Common practice, no source. */
const DROPS = 20;
const LEAST_SAID_L = 0.05;
/** Faster than this nobody counts drops. */
const COUNTED_ML = 10;
const NIGHT_H = 10;

const nightOf = (tried: UnitAsRead, leak: Leak) => {
  const { unit, conditions, staticFeedKPaGauge } = tried;
  return nightOfLeak(unit, conditions, {
    leak,
    hours: NIGHT_H,
    ...(staticFeedKPaGauge !== undefined && {
      staticFeedKPaGauge: standingPressureKPaGauge(unit, conditions, staticFeedKPaGauge),
    }),
  });
};

/** What a drip does in a night: how often the unit starts, what runs to the drain, what the first water is like. */
export function LeakyNight({ tried }: { tried: UnitAsRead }) {
  const [at, setAt] = useState<Leak["at"]>("tap");
  const [size, setSize] = useState<number>(SIZES.indexOf(3));
  const mLPerMin = SIZES[size]!;
  // The thumb goes first: a step is shown at once, its answer follows.
  const asked = useDeferredValue(
    useMemo(() => ({ tried, leak: { at, lPerH: 0.06 * mLPerMin } }), [tried, at, mLPerMin]),
  );
  const night = useMemo(() => nightOf(asked.tried, asked.leak), [asked]);
  const said = words.mLPerMin(inSign(String(mLPerMin), messages.decimalSign));
  return (
    <>
      <fieldset className="knob-row" aria-label={words.leak}>
        {PLACES.map((place) => (
          <button type="button" key={place} aria-pressed={place === at} onClick={() => setAt(place)}>
            {words.leakAt[place]}
            <span className="note">{words.leakSeen[place]}</span>
          </button>
        ))}
      </fieldset>
      <Stepper
        label={mLPerMin <= COUNTED_ML ? `${words.leaks}, ${words.drops(mLPerMin * DROPS)}` : words.leaks}
        said={said}
        onStep={(way) => setSize(Math.min(SIZES.length - 1, Math.max(0, size + way)))}
      />
      <div aria-live="polite">
        <Answer night={night} leak={asked.leak} />
      </div>
    </>
  );
}

function Answer({ night, leak }: { night: Outcome<Night>; leak: Leak }) {
  const theme = useTheme();
  if (night.kind !== "known") return <Band>{whyNot(night)}</Band>;
  const { course, drainL } = night.value;
  const full = course[0]!.storedL;
  const said = sentence(night.value, leak);
  const curve = (y: (step: Night["course"][number]) => number) =>
    course.map((step) => ({ x: step.hours, y: y(step) }));
  const flat = (y: number) => [
    { x: 0, y },
    { x: NIGHT_H, y },
  ];
  const least = Math.min(...course.map((step) => step.storedL));
  return (
    <Band>
      <p className="night-said">{said}</p>
      <Picture
        svg={nowAndChanged({
          theme,
          title: words.leak,
          description: said,
          axis: { from: words.evening, to: words.h(String(NIGHT_H)), end: NIGHT_H },
          panels: [
            {
              label: words.tankLitres,
              now: flat(full),
              changed: curve((step) => step.storedL),
              ends: `${short(least)}–${short(full)}`,
            },
            {
              label: words.drainLitres,
              now: flat(0),
              changed: curve((step) => step.drainL),
              ends: short(drainL),
            },
          ],
        })}
      />
      <p className="note">{words.leakCare}</p>
    </Band>
  );
}

function sentence({ how, starts, drainL, tapL, firstMgPerL, soundMgPerL }: Night, leak: Leak): string {
  const times = starts.low === starts.high ? String(starts.value) : `${starts.low}–${starts.high}`;
  const runs = [
    how === "never-closes" ? words.neverStops : words.starts(times),
    drainL < LEAST_SAID_L ? words.nothingToDrain : words.toDrain(words.L(short(drainL))),
    leak.at === "tap" ? words.atTap(words.L(short(tapL))) : "",
  ];
  const morning = words.morning(words.ppm(short(firstMgPerL)), words.ppm(short(soundMgPerL)));
  return `${runs.filter(Boolean).join(", ")}. ${morning}`;
}
