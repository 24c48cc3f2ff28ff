import type { Change } from "@tapside/records";
import { bookDatabase, photoDatabase } from "./databases.ts";
import { dexieStore } from "./dexie-store.ts";
import { liveBook } from "./live.ts";
import type { LiveBook } from "./live-book.ts";
import { metaIn } from "./meta.ts";
import { newId } from "./new-id.ts";
import { photosIn } from "./photos.ts";

export type { Edit, LiveBook, Snapshot } from "./live-book.ts";

/** Opens a book by the name of its database; the demo book has a name of its own and never mixes. */
export async function openBook(name: string): Promise<LiveBook> {
  const db = bookDatabase(name);
  const opened = await db.open().then(
    () => true,
    () => false,
  );
  const store = opened ? dexieStore(db) : undefined;
  const early: Change[] = [];
  const stopListening = store?.subscribe((changes) => early.push(...changes));
  const stored = await store?.all();
  const ok = stored?.kind === "known";
  const meta = await metaIn(ok ? db : undefined, newId);
  const photos = photosIn(ok ? photoDatabase(name) : undefined);
  stopListening?.();
  if (ok) askToPersist();
  return liveBook({
    name,
    disk: ok ? store : undefined,
    stored: ok ? [...stored.value, ...early] : [],
    meta,
    photos,
  });
}

/** Never counted on: a browser may say no, and the count of unsent changes stays in sight either way. */
function askToPersist(): void {
  if (typeof navigator !== "undefined") void navigator.storage?.persist?.().catch(() => undefined);
}
