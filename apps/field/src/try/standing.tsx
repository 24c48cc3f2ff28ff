import type { UnitAsRead } from "@tapside/assessment";
import { nowAndChanged } from "@tapside/pictures";
import type { Outcome } from "@tapside/quantities";
import { type FirstDraw, firstDraw } from "@tapside/reverse-osmosis";
import { formatRange } from "@tapside/words";
import { useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import { whyNot } from "../screens/why-not.ts";
import { messages } from "../words/messages.ts";
import { short } from "./pictures.tsx";
import { tryWords as words } from "./words.ts";

/** A break, a night, a weekend, a holiday: hours without a drop. */
const HOURS = [2, 10, 60, 400] as const;

const drawnAfter = ({ unit, conditions }: UnitAsRead, standingHours: number) =>
  firstDraw(unit, conditions, { standingHours });

interface StandingProps {
  readonly base: UnitAsRead;
  readonly changed: UnitAsRead;
}

/** Salt creeps through the membrane while nothing flows: the first water at the sample valve, and how much to let run before judging. */
export function Standing({ base, changed }: StandingProps) {
  const [standingHours, setHours] = useState<number>(HOURS[1]);
  const now = useMemo(() => drawnAfter(base, standingHours), [base, standingHours]);
  const then = useMemo(() => drawnAfter(changed, standingHours), [changed, standingHours]);
  return (
    <>
      <fieldset className="knob-row" aria-label={words.standing}>
        {HOURS.map((hours) => (
          <button
            type="button"
            key={hours}
            aria-pressed={hours === standingHours}
            onClick={() => setHours(hours)}
          >
            {words.stood[hours]}
            <span>{words.h(String(hours))}</span>
          </button>
        ))}
      </fieldset>
      <div aria-live="polite">
        <FirstWater now={now} changed={then} />
      </div>
    </>
  );
}

function FirstWater({ now, changed }: { now: Outcome<FirstDraw>; changed: Outcome<FirstDraw> }) {
  const theme = useTheme();
  if (changed.kind !== "known") return <Band>{whyNot(changed)}</Band>;
  const { firstMgPerL, steadyMgPerL, litres, minutes, course } = changed.value;
  const curve = (one: FirstDraw) => one.course.map(({ litres, mgPerL }) => ({ x: litres, y: mgPerL }));
  const before = now.kind === "known" ? now.value : changed.value;
  const ends = `${short(firstMgPerL)} → ${short(steadyMgPerL)}`;
  const end = Math.max(course.at(-1)!.litres, before.course.at(-1)!.litres);
  const range = (of: FirstDraw["litres"]) => formatRange(of, messages.decimalSign);
  return (
    <Band>
      <Picture
        svg={nowAndChanged({
          theme,
          title: words.firstWater,
          description: `${words.firstPpm} ${ends}`,
          axis: { from: "0", to: words.L(short(end)), end },
          panels: [{ label: words.firstPpm, now: curve(before), changed: curve(changed.value), ends }],
        })}
      />
      <p>
        {litres.high > 0
          ? words.letRun(words.L(range(litres)), words.min(range(minutes)))
          : words.nothingToLetRun}
      </p>
      <p className="note">{words.creep}</p>
    </Band>
  );
}
