import { quantile } from "@tapside/quantities";
import { CUSTOMARY_INDICES, customaryIndices, type WaterAnalysis } from "@tapside/water";
import { inSign } from "@tapside/words";
import { useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { messages } from "../words/messages.ts";
import { waterPageWords as words } from "./words.ts";

const oneDecimal = (value: number) =>
  inSign((Math.round(10 * value) / 10).toFixed(1).replace(/^-(?=0\.0$)/, ""), messages.decimalSign);

/** The 5 to 95 % range of each index over the samples; absent where no sample has it. */
const rangesOf = (samples: readonly WaterAnalysis[]) => {
  const each = samples.map(customaryIndices);
  return CUSTOMARY_INDICES.flatMap((id) => {
    const values = each.flatMap((indices) => {
      const outcome = indices[id];
      return outcome.kind === "known" && Number.isFinite(outcome.value) ? [outcome.value] : [];
    });
    return values.length === 0 ? [] : [{ id, low: quantile(values, 0.05), high: quantile(values, 0.95) }];
  });
};

/** Indices for those who ask for them by name: folded away, one decimal, with the range the readings leave. */
export function NamedIndices({ samples }: { samples: readonly WaterAnalysis[] }) {
  const [open, setOpen] = useState(false);
  const ranges = useMemo(() => (open ? rangesOf(samples) : []), [open, samples]);
  return (
    <>
      <button type="button" className="choice" aria-pressed={open} onClick={() => setOpen(!open)}>
        {words.namedIndices}
      </button>
      {ranges.map(({ id, low, high }) => (
        <Band key={id}>
          <span className="row">
            <span>{messages.water.index(id)}</span>
            <span>{words.between(oneDecimal(low), oneDecimal(high))}</span>
          </span>
        </Band>
      ))}
      {open ? (
        <Band>
          <p className="note">{words.indicesNote}</p>
        </Band>
      ) : null}
    </>
  );
}
