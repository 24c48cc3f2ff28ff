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
  /** Tries to store those held in memory; true when none is left there. */
  offerAgain(): Promise<boolean>;
}

/** Photos in their own database; those the phone refuses to store are held in memory. */
export function photosIn(db: PhotoDatabase | undefined): Photos {
  const held = new Map<string, Photo>();
  const store = async ({ hash, mime, bytes }: Photo): Promise<boolean> => {
    try {
      if (!db) return false;
      await withReopen(db, () => db.photos.put({ hash, mime, bytes: bytes.slice().buffer }));
      return true;
    } catch {
      return false;
    }
  };
  return {
    put: async (data, mime) => {
      const bytes = new Uint8Array(data).slice();
      const photo = { hash: sha256Hex(bytes), mime, bytes };
      const safe = await store(photo);
      if (!safe) held.set(photo.hash, photo);
      return { hash: photo.hash, safe };
    },
    offerAgain: async () => {
      for (const photo of held.values()) if (await store(photo)) held.delete(photo.hash);
      return held.size === 0;
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
