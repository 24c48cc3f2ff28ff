import { useId } from "react";

interface TextEntryProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly type?: "text" | "date" | "time";
}

/** Words typed on the phone's own keyboard: label above, value below, the whole band the target. */
export function TextEntry({ label, value, onChange, type = "text" }: TextEntryProps) {
  const id = useId();
  return (
    <label className="band entry" htmlFor={id}>
      <span>{label}</span>
      <input
        id={id}
        type={type}
        value={value}
        autoComplete="off"
        onChange={(event) => onChange(event.target.value)}
      />
    </label>
  );
}
