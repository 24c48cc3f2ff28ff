import { NO_STAMP } from "@tapside/records";
import type { BookDatabase } from "./databases.ts";

/** What a book's database knows about itself. */
export interface Meta {
  readonly device: string;
  /** Everything up to this stamp is in an exported file. */
  readonly exported: string;
  setExported(stamp: string): Promise<void>;
}

export async function metaIn(db: BookDatabase | undefined, newId: () => string): Promise<Meta> {
  const device = await deviceOf(db, newId);
  let exported = String((await db?.meta.get("exported").catch(() => undefined))?.value ?? NO_STAMP);
  return {
    device,
    get exported() {
      return exported;
    },
    setExported: async (stamp) => {
      exported = stamp;
      await db?.meta.put({ name: "exported", value: stamp }).catch(() => undefined);
    },
  };
}

/** Two tabs that open a new book at once must agree on the device, so it is read and set in one transaction. */
async function deviceOf(db: BookDatabase | undefined, newId: () => string): Promise<string> {
  const fresh = newId();
  if (!db) return fresh;
  return db
    .transaction("rw", db.meta, async () => {
      const row = await db.meta.get("device");
      if (row) return String(row.value);
      await db.meta.add({ name: "device", value: fresh });
      return fresh;
    })
    .catch(() => fresh);
}
