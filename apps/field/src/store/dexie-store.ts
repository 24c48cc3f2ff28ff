import { known, type Outcome, refused } from "@tapside/quantities";
import { type Change, type ChangeStore, sortOut } from "@tapside/records";
import type { EntityTable } from "dexie";
import { type BookDatabase, withReopen } from "./databases.ts";
import { KEPT } from "./first-list.ts";
import { pauses } from "./pause.ts";

export interface DexieStore extends ChangeStore {
  /** Moves the changes of a closed visit into one row with its history as text. */
  close(record: string): Promise<Outcome<true>>;
  stop(): void;
}

/** Changes in IndexedDB; other tabs on the same database hear of new ones through a channel. */
export function dexieStore(db: BookDatabase): DexieStore {
  const listeners = new Set<(changes: readonly Change[]) => void>();
  const tell = (changes: readonly Change[]) => {
    for (const listener of listeners) listener(changes);
  };
  const channel =
    typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel(`tapside:${db.name}`);
  channel?.addEventListener("message", (event: MessageEvent<readonly Change[]>) => tell(event.data));
  return {
    append: (changes) =>
      guarded(async () => {
        const sorted = await withReopen(db, () => keep(db, changes));
        if (sorted.reused !== undefined) return refused("id-reused", { id: sorted.reused });
        if (sorted.fresh.length > 0) {
          tell(sorted.fresh);
          channel?.postMessage(sorted.fresh);
        }
        return known({ added: sorted.fresh.length });
      }),
    all: () => guarded(async () => known(await parsed(await withReopen(db, () => readAll(db))))),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: (record) => guarded(async () => known(await withReopen(db, () => closeRecord(db, record)))),
    stop: () => channel?.close(),
  };
}

async function guarded<T>(work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
  try {
    return await work();
  } catch (error) {
    return refused("storage-refused", { reason: String(error) });
  }
}

const keep = (db: BookDatabase, changes: readonly Change[]) =>
  db.transaction("rw", db.changes, db.closed, db.meta, async () => {
    const rows = await rowsOf(db.changes, new Set(changes.map((change) => change.id)));
    const closed = await rowsOf(db.closed, new Set(changes.map((change) => change.record)));
    const kept = new Map<string, Change>();
    for (const row of rows) if (row) kept.set(row.id, JSON.parse(row.text) as Change);
    for (const row of closed)
      for (const change of row ? changesOf(row.text) : []) kept.set(change.id, change);
    const sorted = sortOut(changes, (id) => kept.get(id));
    await db.changes.bulkAdd(
      sorted.fresh.map((change) => ({ id: change.id, record: change.record, text: JSON.stringify(change) })),
    );
    const counted = await db.meta.get(KEPT);
    if (counted) await db.meta.put({ name: KEPT, value: Number(counted.value) + sorted.fresh.length });
    return sorted;
  });

/** A whole book taken in asks once which keys are there, not a thousand times for each. */
async function rowsOf<Row, Key extends "id" | "record">(
  table: EntityTable<Row, Key & keyof Row>,
  keys: ReadonlySet<string>,
): Promise<readonly (Row | undefined)[]> {
  if (keys.size <= 20) return table.bulkGet([...keys] as never[]);
  const there = (await table.toCollection().primaryKeys()) as readonly unknown[];
  return table.bulkGet(there.filter((key) => keys.has(String(key))) as never[]);
}

const changesOf = (text: string): readonly Change[] =>
  text === "" ? [] : text.split("\n").map((line) => JSON.parse(line) as Change);

/** Every change as text. A database that has not counted its changes, or counted wrong, counts them now. */
async function readAll(db: BookDatabase): Promise<readonly string[]> {
  const { texts, counted } = await db.transaction("r", db.changes, db.closed, db.meta, () => textsIn(db));
  if (counted === texts.length) return texts;
  return db.transaction("rw", db.changes, db.closed, db.meta, async () => {
    const again = await textsIn(db);
    await db.meta.put({ name: KEPT, value: again.texts.length });
    return again.texts;
  });
}

async function textsIn(db: BookDatabase) {
  const [rows, closed, counted] = await Promise.all([
    db.changes.toArray(),
    db.closed.toArray(),
    db.meta.get(KEPT),
  ]);
  const texts = closed.flatMap((row) => (row.text === "" ? [] : row.text.split("\n")));
  for (const row of rows) texts.push(row.text);
  return { texts, counted: counted?.value };
}

const A_STRETCH = 100;

async function parsed(texts: readonly string[]): Promise<readonly Change[]> {
  const rest = pauses();
  const changes: Change[] = [];
  for (const text of texts) {
    changes.push(JSON.parse(text) as Change);
    if (changes.length % A_STRETCH === 0) await rest();
  }
  return changes;
}

const closeRecord = (db: BookDatabase, record: string) =>
  db.transaction("rw", db.changes, db.closed, async () => {
    const rows = await db.changes.where("record").equals(record).toArray();
    if (rows.length === 0) return true as const;
    const before = await db.closed.get(record);
    const text = [...(before ? [before.text] : []), ...rows.map((row) => row.text)].join("\n");
    await db.closed.put({ record, text });
    await db.changes.bulkDelete(rows.map((row) => row.id));
    return true as const;
  });
