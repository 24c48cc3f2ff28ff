import { waterHistory } from "@tapside/pictures";
import { stepsInHistory } from "@tapside/water";
import { Band } from "../look/band.tsx";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import { day } from "../screens/day.ts";
import { messages } from "../words/messages.ts";
import type { SiteWater } from "./site-water.ts";
import { waterPageWords as words } from "./words.ts";

/** Fewer readings are a list, not a picture. */
const LEAST_DRAWN = 3;

/** The feed at each visit: drawn with its steps, then written out, newest first. */
export function History({ site: { history } }: { site: SiteWater }) {
  if (history.length === 0) return null;
  const steps = new Map(stepsInHistory(history).map((step) => [step.at, step]));
  return (
    <>
      <Band tint>
        <strong>{messages.water.history}</strong>
      </Band>
      {history.length >= LEAST_DRAWN ? <Drawn history={history} steps={steps} /> : null}
      {[...history].reverse().map(({ at, value }) => {
        const step = steps.get(at);
        return (
          <Band key={at} heavy={step !== undefined}>
            <span className="row">
              <span>{day(at)}</span>
              <span>{messages.water.conductivity(value)}</span>
            </span>
            {step ? (
              <p>
                <strong>
                  {step.after > step.before ? "▲" : "▼"}{" "}
                  {words.step(messages.water.conductivity(step.before))}
                </strong>
              </p>
            ) : null}
          </Band>
        );
      })}
      <Band>
        <p className="note">{messages.water.stepRule}</p>
      </Band>
    </>
  );
}

type Steps = ReadonlyMap<string, ReturnType<typeof stepsInHistory>[number]>;

function Drawn({ history, steps }: { history: SiteWater["history"]; steps: Steps }) {
  const theme = useTheme();
  const told = messages.water.historyTold(
    history.length,
    [...steps.values()].map((step) => ({ ...step, day: day(step.at) })),
  );
  return (
    <div className="band history">
      <Picture
        svg={waterHistory({
          theme,
          points: history.map(({ at, value, u }) => ({ at: Date.parse(at), value, u, step: steps.has(at) })),
          description: told,
          words: {
            first: day(history[0]!.at),
            last: day(history.at(-1)!.at),
            value: (value) => messages.water.conductivity(value),
          },
        })}
      />
    </div>
  );
}
