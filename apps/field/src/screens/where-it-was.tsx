import { useEffect, useState } from "react";
import { useLocation } from "wouter";
import type { LiveBook } from "../store/open-book.ts";
import { isInVisit, type Place, placeOf } from "../store/place.ts";
import { useBook } from "../store/use-book.ts";

/**
 * A phone that ended the app in the middle of a visit (for want of memory, or a flat battery) opens it again where it was. Nothing
 * happens while a visit is open in another tab, nor when the app was opened at a place of its own.
 */
export function WhereItWas() {
  const { live } = useBook();
  const [path, navigate] = useLocation();
  const [settled, setSettled] = useState(false);
  useEffect(() => {
    let wanted = true;
    void placeToReturnTo(live).then((place) => {
      if (!wanted) return;
      if (place) navigate(place, { replace: true });
      setSettled(true);
    });
    return () => {
      wanted = false;
    };
  }, [live, navigate]);
  useEffect(() => {
    if (!settled) return;
    sessionStorage.setItem("here", "yes");
    void live.setPlace(JSON.stringify({ path, ms: Date.now() } satisfies Place));
  }, [live, path, settled]);
  return null;
}

async function placeToReturnTo(live: LiveBook) {
  if (!/^#?\/?$/.test(location.hash) || sessionStorage.getItem("here")) return undefined;
  const kept = await live.place();
  const place = placeOf(kept);
  const visit = live.snapshot().book.visit.get(/^\/visit\/([^/]+)/.exec(place?.path ?? "")?.[1] ?? "");
  if (!place || !isInVisit(place, Date.now()) || !visit || visit.closed) return undefined;
  const held = (await navigator.locks?.query())?.held ?? [];
  return held.some((lock) => lock.name === "visit-open") ? undefined : place.path;
}
