import type { BookDatabase } from "./databases.ts";

export interface TabDevice {
  readonly id: string;
  /** Lets another tab take the id over. */
  release(): void;
}

/** A phone seldom has more tabs of one book; those beyond share the last id, which is safe but hides that they wrote at the same time. */
const MOST_TABS = 8;

/**
 * The device id of this tab. The first tab of a book takes the phone's own; a second one open beside it takes the second, so that what
 * the two write at the same time is seen as written in two places. An id is held by a lock and goes back when its tab ends.
 */
export async function deviceOfTab(db: BookDatabase | undefined, newId: () => string): Promise<TabDevice> {
  if (!db) return { id: newId(), release: () => {} };
  for (let place = 1; place <= MOST_TABS; place++) {
    const release = await holdIfFree(`tapside-device:${db.name}:${place}`);
    if (release || place === MOST_TABS)
      return {
        id: await storedId(db, place === 1 ? "device" : `device:${place}`, newId()),
        release: release ?? (() => {}),
      };
  }
  throw new Error("unreachable");
}

/** Undefined when another tab holds the lock. Where there are no locks there is one tab as far as can be told. */
function holdIfFree(name: string): Promise<(() => void) | undefined> {
  const locks = typeof navigator === "undefined" ? undefined : navigator.locks;
  if (!locks) return Promise.resolve(() => {});
  return new Promise((got) => {
    locks
      .request(name, { ifAvailable: true }, (lock) => {
        if (!lock) return got(undefined);
        return new Promise<void>((end) => got(end));
      })
      .catch(() => got(() => {}));
  });
}

/** Two tabs that open a new book at once must agree on an id, so it is read and set in one transaction. */
const storedId = (db: BookDatabase, name: string, fresh: string): Promise<string> =>
  db
    .transaction("rw", db.meta, async () => {
      const row = await db.meta.get(name);
      if (row) return String(row.value);
      await db.meta.add({ name, value: fresh });
      return fresh;
    })
    .catch(() => fresh);
