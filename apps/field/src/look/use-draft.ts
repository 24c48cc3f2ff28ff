import { useEffect, useRef, useState } from "react";

/** Where a text that is not taken yet waits, so that leaving the screen does not lose it. */
export interface DraftStore {
  load(): string | undefined;
  keep(raw: string | null): void;
}

/**
 * Text being typed over a kept value. It follows the kept value when that changes elsewhere: by undo, or in another tab.
 * What is typed and not taken waits in `store` and stands there again when the screen comes back.
 */
export function useDraft<T>(kept: T, show: (kept: T) => string, store: DraftStore) {
  const [seen, setSeen] = useState(kept);
  const [sent, setSent] = useState(kept);
  const [settled, setSettled] = useState(() => show(kept));
  const [raw, setRaw] = useState(() => store.load() ?? settled);
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
  const done = () => {
    if (store.load() !== undefined) store.keep(null);
  };
  return {
    raw,
    problem,
    /** False while the text is as it was last shown or taken: then there is nothing to keep. */
    touched: raw !== settled,
    type: (text: string) => {
      setRaw(text);
      store.keep(text === settled ? null : text);
    },
    refuse: setProblem,
    /** Shows the kept value afresh, in another unit say. */
    show: (text: string) => settle(text),
    /** The text stands as typed; `value` is what goes into the book for it. */
    take: (value: T) => {
      setSent(value);
      settle(raw);
      done();
    },
  };
}

/** A text that waited from an earlier time is tried again once, as if it had just been left. */
export function useTryAgain(touched: boolean, take: () => void) {
  const first = useRef(true);
  useEffect(() => {
    if (first.current && touched) take();
    first.current = false;
  });
}
