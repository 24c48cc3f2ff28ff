import { useEffect, useState } from "react";
import { Band } from "../look/band.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";

/** Offers a new version of the app, never while a visit is open. */
export function NewVersion() {
  const { snapshot } = useBook();
  const [waiting, setWaiting] = useState<ServiceWorker>();
  const [elsewhere, setElsewhere] = useState(false);
  useEffect(() => {
    void watchForUpdates(setWaiting);
  }, []);
  if (!waiting) return null;
  const visiting = [...snapshot.book.visit.values()].some((visit) => !visit.closed);
  if (visiting) {
    return (
      <aside aria-label={words.phoneSays}>
        <Band tint>
          {words.newVersion}. {words.notWhileVisit}
        </Band>
      </aside>
    );
  }
  const take = async () => {
    if (!(await noVisitOpen())) return setElsewhere(true);
    const taken = () => waiting.state === "activated" && location.reload();
    waiting.addEventListener("statechange", taken);
    taken();
    waiting.postMessage({ type: "SKIP_WAITING" });
  };
  return (
    <aside aria-label={words.phoneSays}>
      <Band tint press={{ onPress: () => void take() }}>
        <strong>{words.newVersion}.</strong> {elsewhere ? words.notWhileVisit : words.takeNew}
      </Band>
    </aside>
  );
}

/** Also of visits in the other book or in another tab, which this book does not show. */
async function noVisitOpen(): Promise<boolean> {
  const held = (await navigator.locks?.query())?.held ?? [];
  return !held.some((lock) => lock.name === "visit-open");
}

async function watchForUpdates(found: (worker: ServiceWorker) => void) {
  if (!("serviceWorker" in navigator) || import.meta.env.DEV) return;
  const registration = await navigator.serviceWorker.register("./sw.js");
  if (registration.waiting) found(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && registration.active) found(worker);
    });
  });
}
