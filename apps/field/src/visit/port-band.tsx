import type { Expected, ExpectedId } from "@tapside/assessment";
import { formatRange } from "@tapside/words";
import { messages } from "../words/messages.ts";
import { Numeral } from "./numeral.tsx";
import { slotTitle } from "./step-title.ts";
import { visitWords as words } from "./words.ts";

const PART: Readonly<Record<ExpectedId, string>> = {
  afterFilterPressure: "plain",
  drainFlow: "element",
  permeateFlow: "permeate",
  permeateTds: "permeate",
  tankFullPressure: "tank",
  deliveredTds: "outlet",
};

interface PortBandProps {
  readonly id: ExpectedId;
  readonly expected: Expected | undefined;
  readonly absent: boolean;
  /** A booster stands behind the filters' gauge. */
  readonly boosted: boolean;
  /** Said where nothing can be expected. */
  readonly whyNot: string;
}

/** One port of the unit and what a sound unit reads there today, hollow. */
export function PortBand({ id, expected, absent, boosted, whyNot }: PortBandProps) {
  if (absent)
    return <div className="band water tint">{`${slotTitle(id)}: ${words.notThere.toLowerCase()}`}</div>;
  const text = expected ? formatRange(expected, messages.decimalSign) : "";
  return (
    <div className="band water port" data-part={PART[id]} {...(expected && { "data-mark": "expected" })}>
      <p className="row">
        <span>{slotTitle(id)}</span>
        <span>{expected ? beside(id, expected, boosted) : ""}</span>
      </p>
      {expected ? (
        <Numeral
          text={text}
          height={47}
          hollow
          unit={messages.unit(expected.unit)}
          name={`${words.expected} ${text} ${expected.unit}`}
        />
      ) : (
        <p className="note">{whyNot}</p>
      )}
    </div>
  );
}

/** What the hands see: seconds for a cup, the scale of the meter, or where the gauge sits. */
function beside(id: ExpectedId, { low, high, scale }: Expected, boosted: boolean): string {
  if (id === "afterFilterPressure" && boosted) return words.beforeBooster;
  if (id === "drainFlow") return words.cupIn("1 L", 60 / high, 60 / low);
  if (id === "permeateFlow") return words.cupIn("500 mL", 30 / high, 30 / low);
  return scale ? words.scale(scale) : "";
}
