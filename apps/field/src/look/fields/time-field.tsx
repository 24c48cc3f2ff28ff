import { useId } from "react";

interface TimeFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string | null) => void;
}

/** A time of day. */
export function TimeField({ label, value, onChange }: TimeFieldProps) {
  const id = useId();
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="time"
        defaultValue={value}
        onBlur={(event) => event.target.value !== value && onChange(event.target.value || null)}
      />
    </div>
  );
}
