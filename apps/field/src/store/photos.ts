import { type Photo, sha256Hex } from "@tapside/records";
import { type PhotoDatabase, withReopen } from "./databases.ts";

export interface Photos {
  /** Known by the SHA-256 of the bytes. `safe` is false when they are held in memory only. */
  put(
    bytes: ArrayBuffer | Uint8Array,
    mime: string,
  ): Promise<{ readonly hash: string; readonly safe: boolean }>;
  get(hash: string): Promise<Photo | undefined>;
  all(): Promise<readonly Photo[]>;
}

/** Photos in their own database; those the phone refuses to store are held in memory. */
export function photosIn(db: PhotoDatabase | undefined): Photos {
  const held = new Map<string, Photo>();
  return {
    put: async (data, mime) => {
      const bytes = new Uint8Array(data).slice();
      const hash = sha256Hex(bytes);
      try {
        if (!db) throw new Error("no database");
        await withReopen(db, () => db.photos.put({ hash, mime, bytes: bytes.buffer }));
        return { hash, safe: true };
      } catch {
        held.set(hash, { hash, mime, bytes });
        return { hash, safe: false };
      }
    },
    get: async (hash) => {
      const row = db && (await withReopen(db, () => db.photos.get(hash)).catch(() => undefined));
      return row ? { ...row, bytes: new Uint8Array(row.bytes) } : held.get(hash);
    },
    all: async () => {
      const rows = db ? await withReopen(db, () => db.photos.toArray()).catch(() => []) : [];
      return [...rows.map((row) => ({ ...row, bytes: new Uint8Array(row.bytes) })), ...held.values()];
    },
  };
}
