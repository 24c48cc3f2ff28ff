import type { Change } from "@tapside/records";
import { type BookDatabase, bookDatabase, photoDatabase } from "./databases.ts";
import { dexieStore } from "./dexie-store.ts";
import { type FirstList, readFirstList } from "./first-list.ts";
import { liveBook } from "./live.ts";
import type { LiveBook } from "./live-book.ts";
import { metaIn } from "./meta.ts";
import { newId } from "./new-id.ts";
import { pause } from "./pause.ts";
import { photosIn } from "./photos.ts";
import { startOf } from "./start-of.ts";

export type { Edit, LiveBook, Snapshot } from "./live-book.ts";

interface Opening {
  readonly db: BookDatabase;
  readonly opened: boolean;
  readonly list: FirstList | undefined;
}

const ahead = new Map<string, Promise<Opening>>();

/** Opens the database of a book that will be asked for, while the scripts that ask are on their way. */
export function openAhead(name: string): void {
  ahead.set(name, begin(name));
}

async function begin(name: string): Promise<Opening> {
  const db = bookDatabase(name);
  const opened = await db.open().then(
    () => true,
    () => false,
  );
  return { db, opened, list: opened ? await readFirstList(db, Date.now()) : undefined };
}

/**
 * Opens a book by the name of its database; the demo book has a name of its own and never mixes. What its first screen said when it was
 * last at rest is told to `onList` at once, before the book itself is read; a book without units is read as soon.
 */
export async function openBook(name: string, onList?: (list: FirstList) => void): Promise<LiveBook> {
  const { db, opened, list } = await (ahead.get(name) ?? begin(name));
  ahead.delete(name);
  if (onList && list && list.lines.length > 0) {
    onList(list);
    await pause();
  }
  const store = opened ? dexieStore(db) : undefined;
  const early: Change[] = [];
  const stopListening = store?.subscribe((changes) => early.push(...changes));
  const [stored, kept] = await Promise.all([store?.all(), metaIn(opened ? db : undefined, newId)]);
  const ok = stored?.kind === "known";
  if (!ok) kept.release();
  const meta = ok ? kept : await metaIn(undefined, newId);
  const photos = photosIn(ok ? photoDatabase(name) : undefined);
  const start = await startOf(ok ? stored.value : []);
  stopListening?.();
  if (ok) askToPersist();
  return liveBook({
    name,
    disk: ok ? store : undefined,
    start,
    early,
    meta,
    photos,
  });
}

/** Never counted on: a browser may say no, and the count of unsent changes stays in sight either way. */
function askToPersist(): void {
  if (typeof navigator !== "undefined") void navigator.storage?.persist?.().catch(() => undefined);
}
