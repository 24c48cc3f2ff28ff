import { useState } from "react";

/** Text being typed over a kept value. It follows the kept value when that changes elsewhere: by undo, or in another tab. */
export function useDraft<T>(kept: T, show: (kept: T) => string) {
  const [seen, setSeen] = useState(kept);
  const [sent, setSent] = useState(kept);
  const [raw, setRaw] = useState(() => show(kept));
  const [settled, setSettled] = useState(raw);
  const [problem, setProblem] = useState("");
  const settle = (text: string) => {
    setRaw(text);
    setSettled(text);
    setProblem("");
  };
  if (!Object.is(kept, seen)) {
    setSeen(kept);
    if (!Object.is(kept, sent)) {
      setSent(kept);
      settle(show(kept));
    }
  }
  return {
    raw,
    problem,
    /** False while the text is as it was last shown or taken: then there is nothing to keep. */
    touched: raw !== settled,
    type: setRaw,
    refuse: setProblem,
    /** Shows the kept value afresh, in another unit say. */
    show: (text: string) => settle(text),
    /** The text stands as typed; `value` is what goes into the book for it. */
    take: (value: T) => {
      setSent(value);
      settle(raw);
    },
  };
}
