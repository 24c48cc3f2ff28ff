import { useEffect, useState, useSyncExternalStore } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";

/** Says on every screen when the phone does not keep the book, and what can be done; else only when the disk is slow. */
export function StorageState() {
  const { live } = useBook();
  const [place] = useLocation();
  const waits = useSyncExternalStore(live.subscribe, () => live.keeping);
  if (live.storage === "refused") {
    return (
      <aside className="storage-state" aria-label={words.phoneSays}>
        <Band heavy press={{ onPress: () => void live.retry() }}>
          <strong>{words.storageRefused}</strong> {words.tryAgain}
        </Band>
        {place === "/more" ? null : (
          <Band tint press={{ to: "/more" }}>
            <span className="name">{words.exportNow}</span>
          </Band>
        )}
      </aside>
    );
  }
  return waits ? <Slow /> : null;
}

const SLOW_AFTER_MS = 400;

/** Kept as a rule within a blink: then nothing is said. */
function Slow() {
  const [slow, setSlow] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setSlow(true), SLOW_AFTER_MS);
    return () => clearTimeout(timer);
  }, []);
  return slow ? (
    <p className="not-kept-yet" role="status">
      {words.notKeptYet}
    </p>
  ) : null;
}
