import type { KitchenOfUnit } from "@tapside/book";
import { REMEDY_IDS, type Remedy, remedy } from "@tapside/kitchen";
import { useEffect, useState } from "react";

/** Every remedy of a kitchen, worked out one after another so that the page answers meanwhile. */
export function useRemedies(kitchen: KitchenOfUnit): readonly Remedy[] {
  const [done, setDone] = useState<{ readonly of?: KitchenOfUnit; readonly tried: readonly Remedy[] }>({
    tried: [],
  });
  useEffect(() => {
    let stopped = false;
    const tried: Remedy[] = [];
    const next = (ids: readonly (typeof REMEDY_IDS)[number][]) => {
      const [id, ...rest] = ids;
      if (stopped || id === undefined) return;
      const one = remedy(id, kitchen, { madeRelative: kitchen.madeRelative });
      if (one) tried.push(one);
      setDone({ of: kitchen, tried: [...tried] });
      setTimeout(() => next(rest));
    };
    const timer = setTimeout(() => next(REMEDY_IDS));
    return () => {
      stopped = true;
      clearTimeout(timer);
    };
  }, [kitchen]);
  return done.of === kitchen ? done.tried : [];
}
