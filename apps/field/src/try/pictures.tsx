import { nowAndChanged, tankPair } from "@tapside/pictures";
import { converted } from "@tapside/quantities";
import { inSign } from "@tapside/words";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import { messages } from "../words/messages.ts";
import type { TriedOutcome } from "./outcome-of.ts";
import { tryWords as words } from "./words.ts";

interface PairProps {
  readonly now: TriedOutcome;
  readonly changed: TriedOutcome;
}

const psi = (kPa: number) => converted(kPa, "kPa", "psi");
/** As many digits as a cup and a pocket meter back. */
export const short = (value: number): string =>
  inSign(value.toFixed(value < 10 ? 1 : 0), messages.decimalSign);

/** Flow and pressure of one filling against time. */
export function FillingPicture({ now, changed }: PairProps) {
  const theme = useTheme();
  const end = Math.max(now.hours, changed.hours);
  const curve = (one: TriedOutcome, y: (step: TriedOutcome["course"][number]) => number) =>
    one.course.map((step) => ({ x: step.hours, y: y(step) }));
  const flow = (one: TriedOutcome) => curve(one, (step) => step.lPerMin);
  const pressure = (one: TriedOutcome) => curve(one, (step) => psi(step.kPa));
  const [first, last] = [changed.course[0]!, changed.course.at(-1)!];
  const ends = [first, last]
    .map(({ lPerMin }) => inSign(lPerMin.toFixed(2), messages.decimalSign))
    .join(" → ");
  return (
    <Picture
      svg={nowAndChanged({
        theme,
        title: words.filling,
        description: `${words.flow} ${ends}, ${words.pressure} ${short(psi(last.kPa))}, ${words.h(short(changed.hours))}`,
        axis: { from: words.empty, to: words.h(short(end)), end },
        panels: [
          { label: words.flow, now: flow(now), changed: flow(changed), ends },
          {
            label: words.pressure,
            now: pressure(now),
            changed: pressure(changed),
            ends: short(psi(last.kPa)),
          },
        ],
      })}
    />
  );
}

/** Both tanks, full: the rule is where the appliance stops. */
export function TankPicture({ now, changed }: PairProps) {
  const theme = useTheme();
  const tank = (label: string, one: TriedOutcome) => ({
    label,
    volumeL: one.volumeL,
    storedL: one.storedL,
    usableL: one.usableL,
    mgPerL: one.deliveredMgPerL,
    said: `${words.L(short(one.usableL))}\n${words.ofL(short(one.storedL))}`,
  });
  return (
    <Picture
      svg={tankPair({
        theme,
        title: words.tank,
        description: `${words.now} ${words.usable(short(now.usableL))}, ${words.changed} ${words.usable(short(changed.usableL))}`,
        tanks: [tank(words.now, now), tank(words.changed, changed)],
      })}
    />
  );
}

/** Flux and dissolved solids from the feed end to the drain end, permeate to waste. */
export function ElementPicture({ now, changed }: PairProps) {
  const theme = useTheme();
  const curve = (one: TriedOutcome, y: (place: TriedOutcome["element"][number]) => number) =>
    one.element.map((place) => ({ x: place.place, y: y(place) }));
  const flux = (one: TriedOutcome) => curve(one, (place) => place.fluxLPerM2H);
  const solids = (one: TriedOutcome) => curve(one, (place) => place.permeateMgPerL);
  const [first, last] = [changed.element[0]!, changed.element.at(-1)!];
  const fluxEnds = `${short(first.fluxLPerM2H)} → ${short(last.fluxLPerM2H)}`;
  const solidsEnds = `${short(first.permeateMgPerL)} → ${short(last.permeateMgPerL)}`;
  return (
    <Picture
      svg={nowAndChanged({
        theme,
        title: words.element,
        description: `${words.flux} ${fluxEnds}, ${words.permeate} ${solidsEnds}`,
        axis: { from: words.feedEnd, to: words.drainEnd, end: 1 },
        panels: [
          { label: words.flux, now: flux(now), changed: flux(changed), ends: fluxEnds },
          { label: words.permeate, now: solids(now), changed: solids(changed), ends: solidsEnds },
        ],
      })}
    />
  );
}
