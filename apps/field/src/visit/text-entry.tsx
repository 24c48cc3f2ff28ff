import { checkText } from "@tapside/records";
import { useId } from "react";
import { bookWords } from "../words/book.ts";

interface TextEntryProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly type?: "text" | "date" | "time";
}

/** Words typed on the phone's own keyboard: label above, value below, the whole band the target. */
export function TextEntry({ label, value, onChange, type = "text" }: TextEntryProps) {
  const id = useId();
  const refused = checkText(value).kind !== "known";
  return (
    <label className="band entry" htmlFor={id}>
      <span>{label}</span>
      <input
        id={id}
        type={type}
        value={value}
        autoComplete="off"
        aria-invalid={refused}
        onChange={(event) => onChange(event.target.value)}
      />
      {refused ? (
        <span className="problem" role="status">
          {bookWords.unkeepable}
        </span>
      ) : null}
    </label>
  );
}
