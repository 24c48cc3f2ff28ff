import { parseReading } from "@tapside/quantities";
import { useId, useState } from "react";
import { sayWhyNot } from "../words/say-why-not.ts";

interface AmountEntryProps {
  readonly label: string;
  readonly unit: string;
  readonly value: number | undefined;
  readonly decimalSign: string;
  /** Undefined while it is blank or no number. */
  readonly onChange: (value: number | undefined) => void;
}

/** A plain amount beside a step: taken while it is typed, the text stays as typed, comma or point. */
export function AmountEntry({ label, unit, value, decimalSign, onChange }: AmountEntryProps) {
  const id = useId();
  const [raw, setRaw] = useState(value === undefined ? "" : String(value).replace(".", decimalSign));
  const read = raw.trim() === "" ? undefined : parseReading(raw);
  const type = (text: string) => {
    setRaw(text);
    const typed = parseReading(text);
    onChange(typed.kind === "known" && typed.value.value >= 0 ? typed.value.value : undefined);
  };
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <div className="in-unit">
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={raw}
          aria-invalid={read?.kind === "refused"}
          aria-describedby={`${id}-problem`}
          onChange={(event) => type(event.target.value)}
        />
        <span className="unit">{unit}</span>
      </div>
      <p id={`${id}-problem`} role="status" className="fixed-words">
        {read?.kind === "refused" ? <span className="problem">{sayWhyNot(read)}</span> : null}
      </p>
    </div>
  );
}
