import { known, refused } from "@tapside/quantities";
import { canonicalJson } from "./canonical-json.ts";
import type { Change } from "./change.ts";
import type { ChangeStore } from "./change-store.ts";

/** A store that lives as long as the process: for tests, scripts, and phones that refuse storage. */
export function memoryStore(): ChangeStore {
  const kept = new Map<string, Change>();
  const listeners = new Set<(changes: readonly Change[]) => void>();
  return {
    append: async (changes) => {
      const sorted = sortOut(changes, (id) => kept.get(id));
      if (sorted.reused !== undefined) return refused("id-reused", { id: sorted.reused });
      for (const change of sorted.fresh) kept.set(change.id, change);
      if (sorted.fresh.length > 0) for (const listener of listeners) listener(sorted.fresh);
      return known({ added: sorted.fresh.length });
    },
    all: async () => known([...kept.values()]),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Parts new changes from those already kept, and finds an id that comes with two contents. */
export function sortOut(
  changes: readonly Change[],
  keptById: (id: string) => Change | undefined,
): { readonly fresh: readonly Change[]; readonly reused?: string } {
  const fresh = new Map<string, Change>();
  for (const change of changes) {
    const other = fresh.get(change.id) ?? keptById(change.id);
    if (!other) fresh.set(change.id, change);
    else if (!sameChange(other, change)) return { fresh: [], reused: change.id };
  }
  return { fresh: [...fresh.values()] };
}

const sameChange = (a: Change, b: Change): boolean => a === b || canonicalJson(a) === canonicalJson(b);
