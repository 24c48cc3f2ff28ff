import Dexie, { type EntityTable } from "dexie";

interface ChangeRow {
  readonly id: string;
  readonly record: string;
  readonly text: string;
}

interface ClosedRow {
  /** Id of the closed visit. */
  readonly record: string;
  /** Its changes, one JSON line each. */
  readonly text: string;
}

interface MetaRow {
  readonly name: string;
  readonly value: unknown;
}

interface PhotoRow {
  readonly hash: string;
  readonly mime: string;
  readonly bytes: ArrayBuffer;
}

export type BookDatabase = Dexie & {
  changes: EntityTable<ChangeRow, "id">;
  closed: EntityTable<ClosedRow, "record">;
  meta: EntityTable<MetaRow, "name">;
};

export type PhotoDatabase = Dexie & { photos: EntityTable<PhotoRow, "hash"> };

const STRICT = { chromeTransactionDurability: "strict" } as const;

/** Generic tables, version 1 for ever: what is in a change is the matter of its schema number. */
export function bookDatabase(name: string): BookDatabase {
  const db = new Dexie(name, STRICT) as BookDatabase;
  db.version(1).stores({ changes: "id, record", closed: "record", meta: "name" });
  return db;
}

/** Photos lie in a database of their own, as ArrayBuffers by hash. */
export function photoDatabase(name: string): PhotoDatabase {
  const db = new Dexie(`${name}-photos`, STRICT) as PhotoDatabase;
  db.version(1).stores({ photos: "hash" });
  return db;
}

const LOST = /Connection to Indexed Database server lost|connection is closing|DatabaseClosedError/i;

/** Runs `work`; when the browser has dropped the connection: close, reopen, once more. */
export async function withReopen<T>(db: Dexie, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!LOST.test(String(error))) throw error;
    db.close({ disableAutoOpen: false });
    await db.open();
    return work();
  }
}
