import { NO_STAMP } from "@tapside/records";
import type { BookDatabase } from "./databases.ts";
import { deviceOfTab } from "./device-of-tab.ts";
import { type FirstList, keepFirstList } from "./first-list.ts";

/** What a book's database knows about itself. */
export interface Meta {
  readonly device: string;
  /** Everything up to this stamp is in an exported file. */
  readonly exported: string;
  setExported(stamp: string): Promise<void>;
  /** Where in the app the hands were, as text of the app's own. */
  place(): Promise<string | undefined>;
  setPlace(text: string): Promise<void>;
  /** Keeps the first screen for the next time the book is opened; it stands on this many changes. */
  setFirstList(list: FirstList, changes: number): Promise<void>;
  /** Lets another tab take this one's device id over. */
  release(): void;
}

export async function metaIn(db: BookDatabase | undefined, newId: () => string): Promise<Meta> {
  const [tab, row] = await Promise.all([
    deviceOfTab(db, newId),
    db?.meta.get("exported").catch(() => undefined),
  ]);
  let exported = String(row?.value ?? NO_STAMP);
  return {
    device: tab.id,
    release: tab.release,
    get exported() {
      return exported;
    },
    place: async () => {
      const row = await db?.meta.get("place").catch(() => undefined);
      return row && String(row.value);
    },
    setPlace: async (text) => {
      await db?.meta.put({ name: "place", value: text }).catch(() => undefined);
    },
    setFirstList: async (list, changes) => {
      if (db) await keepFirstList(db, list, changes);
    },
    setExported: async (stamp) => {
      exported = stamp;
      await db?.meta.put({ name: "exported", value: stamp }).catch(() => undefined);
    },
  };
}
