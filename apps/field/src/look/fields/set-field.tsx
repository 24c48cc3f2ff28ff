import type { Choices } from "./choice-field.tsx";

interface SetFieldProps {
  readonly label: string;
  readonly value: readonly string[];
  readonly choices: Choices;
  readonly onChange: (set: readonly string[]) => void;
}

/** Any of a few. */
export function SetField({ label, value, choices, onChange }: SetFieldProps) {
  const turn = (one: string) =>
    onChange(value.includes(one) ? value.filter((other) => other !== one) : [...value, one]);
  return (
    <fieldset className="set">
      <legend className="band">{label}</legend>
      {choices.map(([one, text]) => (
        <button
          type="button"
          key={one}
          className="choice"
          aria-pressed={value.includes(one)}
          onClick={() => turn(one)}
        >
          {text}
        </button>
      ))}
    </fieldset>
  );
}
