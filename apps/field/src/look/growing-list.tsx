import { type ReactNode, useEffect, useRef, useState } from "react";
import { Band } from "./band.tsx";

interface GrowingListProps<T> {
  readonly items: readonly T[];
  readonly more: (left: number) => string;
  /** `before` is the item above it. */
  readonly children: (item: T, before?: T) => ReactNode;
}

/** As many as fill a screen are there at once, the others when they have been painted. */
const FIRST = 14;
const STEP = 40;

/** A long list drawn as far as it is looked at: it grows when its end comes near, or when its last band is pressed. */
export function GrowingList<T>({ items, more, children }: GrowingListProps<T>) {
  const [shown, setShown] = useState(FIRST);
  const end = useRef<HTMLDivElement>(null);
  const left = items.length - shown;
  useEffect(() => {
    const mark = end.current;
    if (!mark || left <= 0) return;
    const watch = new IntersectionObserver(
      (seen) => seen.some((one) => one.isIntersecting) && setShown((now) => now + STEP),
      { rootMargin: "600px" },
    );
    watch.observe(mark);
    return () => watch.disconnect();
  }, [left]);
  return (
    <>
      {items.slice(0, shown).map((item, i) => children(item, items[i - 1]))}
      {left > 0 ? (
        <div ref={end}>
          <Band tint press={{ onPress: () => setShown(shown + STEP) }}>
            {more(left)}
          </Band>
        </div>
      ) : null}
    </>
  );
}
