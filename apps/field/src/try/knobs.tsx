import { useState } from "react";
import { KNOB_IDS, type KnobId, PART_IDS, type Tried, turned } from "./change.ts";
import { tryWords as words } from "./words.ts";

interface KnobsProps {
  readonly tried: Tried;
  readonly start: Tried;
  readonly canRenew: boolean;
  readonly vented: boolean;
  readonly hasBooster: boolean;
  readonly onTurn: (next: Tried) => void;
}

const VALUES: Readonly<Record<KnobId, (tried: Tried) => number>> = {
  water: (tried) => tried.temperatureC,
  feed: (tried) => tried.feedPsi,
  charge: (tried) => tried.chargePsi,
  restrictor: (tried) => tried.restrictor,
};

/** One number at a time under the thumb; the parts beside it are put in and taken out by a tap. */
export function Knobs({ tried, start, canRenew, vented, hasBooster, onTurn }: KnobsProps) {
  const [knob, setKnob] = useState<KnobId>("water");
  const value = (id: KnobId, of: Tried) => words.value[id](String(VALUES[id](of)));
  return (
    <section className="knobs" aria-label={words.title}>
      <div className="knob-row">
        {PART_IDS.filter((part) => part !== "element" || canRenew).map((part) => (
          <button
            type="button"
            key={part}
            aria-pressed={tried.parts[part]}
            onClick={() => onTurn({ ...tried, parts: { ...tried.parts, [part]: !tried.parts[part] } })}
          >
            {part === "booster" && hasBooster ? words.withoutBooster : words.parts[part]}
          </button>
        ))}
      </div>
      <div className="knob-row">
        {KNOB_IDS.filter((id) => id !== "charge" || !vented).map((id) => (
          <button type="button" key={id} aria-pressed={id === knob} onClick={() => setKnob(id)}>
            {words.knobs[id]}
            <span className={VALUES[id](tried) === VALUES[id](start) ? "" : "moved"}>{value(id, tried)}</span>
          </button>
        ))}
      </div>
      <div className="knob-turn">
        <button
          type="button"
          aria-label={words.less(words.knobs[knob])}
          onClick={() => onTurn(turned(tried, knob, -1))}
        >
          −
        </button>
        <strong aria-live="polite">{value(knob, tried)}</strong>
        <button
          type="button"
          aria-label={words.more(words.knobs[knob])}
          onClick={() => onTurn(turned(tried, knob, 1))}
        >
          +
        </button>
      </div>
    </section>
  );
}
