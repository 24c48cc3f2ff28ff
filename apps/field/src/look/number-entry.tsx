import { convert, known, type Outcome, parseReading } from "@tapside/quantities";
import { useId, useState } from "react";
import { sayWhyNot } from "../words/say-why-not.ts";

interface NumberEntryProps {
  readonly label: string;
  /** Kept value in `baseUnit`; undefined when blank. */
  readonly value: number | undefined;
  readonly baseUnit: string;
  /** Units offered; the first is shown. */
  readonly units: readonly string[];
  readonly range?: readonly [low: number, high: number];
  readonly onChange: (value: number | null) => void;
}

/**
 * A number of the set-up: typed text stays as typed, its value is kept in the base unit. What cannot be a number, or
 * lies outside what the thing can be, is refused by a sentence at a fixed place and nothing is lost.
 */
export function NumberEntry({ label, value, baseUnit, units, range, onChange }: NumberEntryProps) {
  const id = useId();
  const [unit, setUnit] = useState(units[0] ?? baseUnit);
  const [raw, setRaw] = useState(() => shown(value, baseUnit, unit));
  const [problem, setProblem] = useState("");
  const take = (text: string, inUnit: string) => {
    if (text.trim() === "") {
      setProblem("");
      return onChange(null);
    }
    const typed = parseReading(text);
    if (typed.kind !== "known") return setProblem(sayWhyNot(typed));
    const base = inUnitOf(typed.value.value, inUnit, baseUnit);
    if (base.kind !== "known") return setProblem(sayWhyNot(base));
    if (range && (base.value < range[0] || base.value > range[1])) {
      return setProblem(
        `${shown(range[0], baseUnit, inUnit)} to ${shown(range[1], baseUnit, inUnit)} ${inUnit} is possible here.`,
      );
    }
    setProblem("");
    onChange(base.value);
  };
  const following = units[(units.indexOf(unit) + 1) % units.length] ?? unit;
  return (
    <div className="band entry">
      <div className="row">
        <label htmlFor={id}>{label}</label>
        {units.length > 1 ? (
          <button
            type="button"
            className="unit-switch"
            onClick={() => {
              setUnit(following);
              take(raw, following);
            }}
          >
            {unit}
          </button>
        ) : (
          <span className="unit">{unit}</span>
        )}
      </div>
      <input
        id={id}
        inputMode="decimal"
        autoComplete="off"
        value={raw}
        aria-invalid={problem !== ""}
        aria-describedby={`${id}-problem`}
        onChange={(event) => setRaw(event.target.value)}
        onBlur={() => take(raw, unit)}
      />
      <p id={`${id}-problem`} role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </div>
  );
}

function shown(value: number | undefined, from: string, to: string): string {
  if (value === undefined || value === null) return "";
  const outcome = inUnitOf(value, from, to);
  return outcome.kind === "known" ? String(Number(outcome.value.toPrecision(4))) : "";
}

/** A plain number has no unit to convert. */
const inUnitOf = (value: number, from: string, to: string): Outcome<number> =>
  from === to ? known(value) : convert(value, from, to);
