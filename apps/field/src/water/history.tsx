import { stepsInHistory } from "@tapside/water";
import { Band } from "../look/band.tsx";
import { day } from "../screens/day.ts";
import type { SiteWater } from "./site-water.ts";
import { waterPageWords as words } from "./words.ts";

const shown = (ec: number) => `${Number(ec.toPrecision(2))} µS/cm`;

/** The feed at each visit, newest first, with the steps marked. */
export function History({ site }: { site: SiteWater }) {
  if (site.history.length === 0) return null;
  const steps = new Map(stepsInHistory(site.history).map((step) => [step.at, step]));
  return (
    <>
      <Band tint>
        <strong>{words.history}</strong>
      </Band>
      {[...site.history].reverse().map(({ at, value }) => {
        const step = steps.get(at);
        return (
          <Band key={at} heavy={step !== undefined}>
            <span className="row">
              <span>{day(at)}</span>
              <span>{shown(value)}</span>
            </span>
            {step ? (
              <p>
                <strong>
                  {step.after > step.before ? "▲" : "▼"} {words.step(shown(step.before))}
                </strong>
              </p>
            ) : null}
          </Band>
        );
      })}
      <Band>
        <p className="note">{words.stepRule}</p>
      </Band>
    </>
  );
}
