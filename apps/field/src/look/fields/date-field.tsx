import { useId } from "react";
import { bookWords as words } from "../../words/book.ts";
import { type DraftStore, useDraft, useTryAgain } from "../use-draft.ts";

interface DateFieldProps {
  readonly label: string;
  readonly value: string;
  /** May lie in the future: an end date, a planned day. */
  readonly toCome?: boolean;
  readonly store: DraftStore;
  readonly onChange: (text: string | null) => void;
}

/** A day; kept when it is left. */
export function DateField({ label, value, toCome, store, onChange }: DateFieldProps) {
  const id = useId();
  const draft = useDraft(value, (kept) => kept, store);
  const keep = (badInput: boolean) => {
    if (badInput) return draft.refuse(words.noSuchDay);
    if (!draft.touched) return draft.refuse("");
    if (draft.raw > (toCome ? LATEST : todayIso())) return draft.refuse(words.dayToCome);
    if (draft.raw !== "" && draft.raw < EARLIEST) return draft.refuse(words.dayTooOld);
    draft.take(draft.raw);
    onChange(draft.raw || null);
  };
  useTryAgain(draft.touched, () => keep(false));
  return (
    <div className="band entry">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="date"
        value={draft.raw}
        aria-invalid={draft.problem !== ""}
        aria-describedby={`${id}-problem`}
        onChange={(event) => draft.type(event.target.value)}
        onBlur={(event) => keep(event.target.validity.badInput)}
      />
      <p id={`${id}-problem`} role="status">
        {draft.problem ? <span className="problem">{draft.problem}</span> : null}
      </p>
    </div>
  );
}

/** No part of a unit in service is older. */
const EARLIEST = "1980-01-01";
const LATEST = "2099-12-31";

/** The day on this phone's own calendar. */
export function todayIso(nowMs = Date.now()): string {
  const now = new Date(nowMs);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
