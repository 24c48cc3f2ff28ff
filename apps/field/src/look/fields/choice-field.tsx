import { useId } from "react";
import { setupWords as words } from "../../words/setup.ts";

export type Choices = readonly (readonly [value: string, label: string])[];

interface ChoiceFieldProps {
  readonly label: string;
  readonly value: string;
  readonly choices: Choices;
  /** Asked for as long as nothing is chosen: what holds until then. */
  readonly ask?: string | undefined;
  /** What holds while it is blank, shown in its place. */
  readonly otherwise?: string | undefined;
  readonly onChange: (text: string | null) => void;
}

/** One of a few. */
export function ChoiceField({ label, value, choices, ask, otherwise, onChange }: ChoiceFieldProps) {
  const id = useId();
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        data-blank={value === ""}
        aria-describedby={ask ? `${id}-ask` : undefined}
        onChange={(event) => onChange(event.target.value || null)}
      >
        <option value="">{ask ? words.choose : (otherwise ?? "–")}</option>
        {choices.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
      {ask ? (
        <p id={`${id}-ask`} className="note">
          {value === "" ? ask : ""}
        </p>
      ) : null}
    </div>
  );
}
