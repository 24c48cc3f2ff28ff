import { known, type Outcome } from "@tapside/quantities";
import {
  type Book,
  bookOf,
  type Change,
  checkValue,
  EMPTY_STATE,
  exportFile,
  type FieldValue,
  fold,
  GONE,
  importFile,
  memoryStore,
  NO_STAMP,
  nextStamp,
  observeStamp,
  type Photo,
  replacedBy,
  SCHEMA,
  type State,
  undoOf,
  uuidV7,
} from "@tapside/records";
import { bookDatabase, photoDatabase } from "./databases.ts";
import { type DexieStore, dexieStore } from "./dexie-store.ts";
import { type Meta, metaIn } from "./meta.ts";
import { type Photos, photosIn } from "./photos.ts";

export interface Snapshot {
  readonly book: Book;
  readonly state: State;
  /** Grows with everything a screen may show, storage and export included. */
  readonly revision: number;
}

export interface Edit {
  readonly kind: string;
  readonly record: string;
  readonly fields: Readonly<Record<string, FieldValue>>;
}

export interface WriteOptions {
  readonly why?: string;
  /** False keeps the edit out of `undo`. */
  readonly undoable?: boolean;
}

/** The book as the app holds it: folded in memory, every change kept in the phone's database. */
export interface LiveBook {
  readonly name: string;
  snapshot(): Snapshot;
  subscribe(listener: () => void): () => void;
  /** Folded at once; rejects text that `checkText` refuses; resolves when the change is safe on the disk, or held in memory if `storage` is "refused". */
  write(
    kind: string,
    record: string,
    fields: Readonly<Record<string, FieldValue>>,
    options?: string | WriteOptions,
  ): Promise<void>;
  /** Several records in one step of undo and one transaction. */
  writeAll(edits: readonly Edit[], options?: string | WriteOptions): Promise<void>;
  /** A field's value, of whatever kind of record. */
  field(record: string, name: string): FieldValue | undefined;
  /** Takes back the newest own step; answers with the first field touched, or undefined when there was none. */
  undo(): Promise<string | undefined>;
  readonly canUndo: boolean;
  newId(): string;
  putPhoto(bytes: ArrayBuffer | Uint8Array, mime: string): Promise<string>;
  getPhoto(hash: string): Promise<Photo | undefined>;
  /** Everything as one text; counts as exported unless `mark` is false (then call `markExported` when it is handed over). */
  exportText(options?: { readonly mark?: boolean }): Promise<string>;
  markExported(): Promise<void>;
  importText(text: string): Promise<Outcome<{ readonly added: number }>>;
  /** Packs the history of a closed visit into one row. */
  closeVisit(visitId: string): Promise<void>;
  /** Changes since the last export. */
  readonly unsent: number;
  readonly storage: "ok" | "refused";
  /** A change taken in carries a time more than a day ahead of this phone's clock. */
  readonly clockAhead: boolean;
  close(): void;
}

interface Step {
  readonly before: State;
  readonly changes: readonly Change[];
}

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
  return liveBook(name, ok ? store : undefined, ok ? [...stored.value, ...early] : [], meta, photos);
}

/** Never counted on: a browser may say no, and the count of unsent changes stays in sight either way. */
function askToPersist(): void {
  if (typeof navigator !== "undefined") void navigator.storage?.persist?.().catch(() => undefined);
}

function newId(): string {
  return uuidV7(Date.now(), crypto.getRandomValues(new Uint8Array(10)));
}

function liveBook(
  name: string,
  disk: DexieStore | undefined,
  stored: readonly Change[],
  meta: Meta,
  photos: Photos,
): LiveBook {
  const listeners = new Set<() => void>();
  const byId = new Map<string, Change>();
  let clock = NO_STAMP;
  let now: Snapshot = { book: bookOf(EMPTY_STATE), state: EMPTY_STATE, revision: 0 };
  let steps: readonly Step[] = [];
  let pending: Change[] = [];
  let queue: Promise<void> = Promise.resolve();
  let storage: LiveBook["storage"] = disk ? "ok" : "refused";
  let unsafePhotos = false;
  let clockAhead = false;

  const show = (next: Pick<Snapshot, "book" | "state">) => {
    now = { ...next, revision: now.revision + 1 };
    for (const listener of listeners) listener();
  };
  const takeIn = (changes: readonly Change[]) => {
    const fresh = changes.filter((change) => !byId.has(change.id));
    if (fresh.length === 0) return;
    for (const change of fresh) {
      byId.set(change.id, change);
      const observed = observeStamp(clock, change.at, Date.now());
      clock = observed.newest;
      clockAhead ||= observed.tooFarAhead;
    }
    const state = fold(now.state, fresh);
    show({ state, book: bookOf(state, now) });
  };
  const setStorage = (next: LiveBook["storage"]) => {
    if (next === storage) return;
    storage = next;
    show(now);
  };
  /** What the disk refused stays pending and is offered again with the next change. */
  const flush = async () => {
    if (!disk || pending.length === 0) return;
    const batch = pending;
    const outcome = await disk.append(batch);
    if (outcome.kind === "known") pending = pending.filter((change) => !batch.includes(change));
    setStorage(outcome.kind === "known" && !unsafePhotos ? "ok" : "refused");
  };
  const keep = (changes: readonly Change[]): Promise<void> => {
    takeIn(changes);
    pending = [...pending, ...changes];
    queue = queue.then(flush, flush);
    return queue;
  };
  const changeOf = (edit: Edit, why: string | undefined): Change => {
    const wallMs = Date.now();
    clock = nextStamp(clock, wallMs);
    const record = now.state.records.get(edit.record);
    const back = record?.fields.get(GONE)?.value === true && !(GONE in edit.fields);
    const fields = back ? { ...edit.fields, [GONE]: false } : edit.fields;
    const over = replacedBy(meta.device, record, Object.keys(fields));
    return {
      id: newId(),
      record: edit.record,
      kind: edit.kind,
      fields,
      at: clock,
      wall: new Date(wallMs).toISOString(),
      device: meta.device,
      schema: SCHEMA,
      ...(why !== undefined && { why }),
      ...(over.length > 0 && { over }),
    };
  };
  const writeAll = (edits: readonly Edit[], options: string | WriteOptions = {}): Promise<void> => {
    const { why, undoable = true } = typeof options === "string" ? { why: options } : options;
    const bad = edits.map((edit) => checkValue(edit.fields)).find((check) => check.kind === "refused");
    if (bad?.kind === "refused") return Promise.reject(new Error(bad.code));
    const changes = edits.map((edit) => changeOf(edit, why));
    if (undoable && changes.length > 0) steps = [...steps, { before: now.state, changes }];
    return keep(changes);
  };
  const undo = async (): Promise<string | undefined> => {
    const step = steps.at(-1);
    if (!step) return undefined;
    steps = steps.slice(0, -1);
    const edits = step.changes
      .map((change) => ({
        kind: change.kind,
        record: change.record,
        fields: undoOf(change, step.before, now.state),
      }))
      .filter((edit) => Object.keys(edit.fields).length > 0);
    await writeAll(edits, { why: "undo", undoable: false });
    return Object.keys(step.changes[0]?.fields ?? {})[0];
  };
  const keepPhoto = async (bytes: ArrayBuffer | Uint8Array, mime: string): Promise<string> => {
    const { hash, safe } = await photos.put(bytes, mime);
    if (!safe) {
      unsafePhotos = true;
      setStorage("refused");
    }
    return hash;
  };
  const markExported = async () => {
    await meta.setExported(clock);
    show(now);
  };

  takeIn(stored);
  disk?.subscribe(takeIn);
  return {
    name,
    snapshot: () => now,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    write: (kind, record, fields, options) => writeAll([{ kind, record, fields }], options),
    writeAll,
    field: (record, field) => now.state.records.get(record)?.fields.get(field)?.value,
    undo,
    get canUndo() {
      return steps.length > 0;
    },
    newId,
    putPhoto: keepPhoto,
    getPhoto: photos.get,
    exportText: async ({ mark = true } = {}) => {
      const text = exportFile({ changes: [...byId.values()], photos: await photos.all() });
      if (mark) await markExported();
      return text;
    },
    markExported,
    importText: async (text) => {
      const content = importFile(text);
      if (content.kind !== "known") return content;
      const clash = await checkReuse(byId, content.value.changes);
      if (clash.kind !== "known") return clash;
      for (const photo of content.value.photos) await keepPhoto(photo.bytes, photo.mime);
      const fresh = content.value.changes.filter((change) => !byId.has(change.id));
      await keep(fresh);
      return known({ added: fresh.length });
    },
    closeVisit: async (visitId) => {
      await queue;
      await disk?.close(visitId);
    },
    get unsent() {
      let count = 0;
      for (const change of byId.values()) if (change.at > meta.exported && change.kind !== "draft") count++;
      return count;
    },
    get storage() {
      return storage;
    },
    get clockAhead() {
      return clockAhead;
    },
    close: () => disk?.stop(),
  };
}

/** Ids that came with another content than ours are refused loudly, before anything is taken in. */
async function checkReuse(ours: ReadonlyMap<string, Change>, theirs: readonly Change[]) {
  const scratch = memoryStore();
  await scratch.append(theirs.flatMap((change) => ours.get(change.id) ?? []));
  return scratch.append(theirs);
}
