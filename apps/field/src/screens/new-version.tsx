import { useEffect, useState } from "react";
import { Band } from "../look/band.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";

/** Offers a new version of the app, never while a visit is open. */
export function NewVersion() {
  const { snapshot } = useBook();
  const [waiting, setWaiting] = useState<ServiceWorker>();
  useEffect(() => {
    void watchForUpdates(setWaiting);
  }, []);
  if (!waiting) return null;
  const visiting = [...snapshot.book.visit.values()].some((visit) => !visit.closed);
  if (visiting) {
    return (
      <Band tint>
        {words.newVersion}. {words.notWhileVisit}
      </Band>
    );
  }
  const take = () => {
    navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
    waiting.postMessage({ type: "SKIP_WAITING" });
  };
  return (
    <Band tint press={{ onPress: take }}>
      <strong>{words.newVersion}.</strong> {words.takeNew}
    </Band>
  );
}

async function watchForUpdates(found: (worker: ServiceWorker) => void) {
  if (!("serviceWorker" in navigator) || import.meta.env.DEV) return;
  const registration = await navigator.serviceWorker.register("./sw.js");
  if (registration.waiting) found(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && navigator.serviceWorker.controller) found(worker);
    });
  });
}
