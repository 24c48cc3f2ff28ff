import { checkValue } from "@tapside/records";
import { useId } from "react";
import { bookWords as words } from "../../words/book.ts";
import { type DraftStore, useDraft, useTryAgain } from "../use-draft.ts";

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly required: boolean;
  readonly store: DraftStore;
  readonly onChange: (text: string | null) => void;
}

/** A line of text; kept when it is left. */
export function TextField({ label, value, required, store, onChange }: TextFieldProps) {
  const id = useId();
  const draft = useDraft(value, (kept) => kept, store);
  const text = draft.raw.trim();
  const refusal = checkValue(draft.raw).kind === "known" ? "" : words.unkeepable;
  const problem = refusal || (required && text === "" ? words.nameNeeded : "");
  const keep = () => {
    if (problem !== "" || !draft.touched) return;
    draft.take(text);
    onChange(text === "" ? null : text);
  };
  useTryAgain(draft.touched, keep);
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={draft.raw}
        autoComplete="off"
        aria-invalid={problem !== ""}
        aria-describedby={`${id}-problem`}
        onChange={(event) => draft.type(event.target.value)}
        onBlur={keep}
      />
      <p id={`${id}-problem`} role="status">
        {problem ? <span className="problem">{problem}</span> : null}
      </p>
    </div>
  );
}
