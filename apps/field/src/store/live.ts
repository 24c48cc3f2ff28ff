import { known } from "@tapside/quantities";
import { bookOf, type Change, checkValue, exportFile, fold, importFile, memoryStore } from "@tapside/records";
import { changeMaker } from "./change-maker.ts";
import type { DexieStore } from "./dexie-store.ts";
import { diskQueue } from "./disk-queue.ts";
import type { Edit, LiveBook, Snapshot, WriteOptions } from "./live-book.ts";
import type { Meta } from "./meta.ts";
import { newId } from "./new-id.ts";
import type { Photos } from "./photos.ts";
import type { Start } from "./start-of.ts";
import { type Step, undoSteps } from "./undo-steps.ts";

interface Parts {
  readonly name: string;
  readonly disk: DexieStore | undefined;
  readonly start: Start;
  /** What other tabs wrote while it was being read. */
  readonly early: readonly Change[];
  readonly meta: Meta;
  readonly photos: Photos;
}

/** The book in memory over what the disk holds: folds at once, keeps a moment later. */
export function liveBook({ name, disk, start, early, meta, photos }: Parts): LiveBook {
  const listeners = new Set<() => void>();
  const byId = new Map<string, Change>(start.changes.map((change) => [change.id, change]));
  const maker = changeMaker(meta.device);
  const steps = undoSteps();
  let now: Snapshot = { book: start.book, state: start.state, revision: 0 };
  let unsafePhotos = false;
  let shownAsRefused = disk === undefined;

  const tell = () => {
    for (const listener of listeners) listener();
  };
  const show = (next: Pick<Snapshot, "book" | "state">) => {
    now = { ...next, revision: now.revision + 1 };
    tell();
  };
  const refused = () => queue.refused || unsafePhotos;
  /** A new snapshot when storage turned; else only those who look at `keeping` hear of it. */
  const moved = () => {
    if (refused() === shownAsRefused) return tell();
    shownAsRefused = refused();
    show(now);
  };
  const queue = diskQueue(disk, moved);
  const takeIn = (changes: readonly Change[]) => {
    const fresh = changes.filter((change) => !byId.has(change.id));
    if (fresh.length === 0) return;
    for (const change of fresh) {
      byId.set(change.id, change);
      maker.observe(change.at);
    }
    const state = fold(now.state, fresh);
    show({ state, book: bookOf(state, now) });
  };
  const keep = (changes: readonly Change[]): Promise<void> => {
    takeIn(changes);
    return queue.keep(changes);
  };
  /** Makes the changes of some edits, remembers them as a step, keeps them. */
  const writeStep = (edits: readonly Edit[], why: string | undefined, remember?: (step: Step) => void) => {
    const changes = edits.map((edit) => maker.make(edit, now.state, why));
    if (changes.length > 0) remember?.({ before: now.state, changes });
    return keep(changes);
  };
  const writeAll = (edits: readonly Edit[], options: string | WriteOptions = {}): Promise<void> => {
    const { why, undoable = true } = typeof options === "string" ? { why: options } : options;
    const bad = edits.map((edit) => checkValue(edit.fields)).find((check) => check.kind === "refused");
    if (bad?.kind === "refused") return Promise.reject(new Error(bad.code));
    return writeStep(edits, why, undoable ? steps.add : undefined);
  };
  const undo = async (): Promise<string | undefined> => {
    const step = steps.take(now.state);
    if (!step) return undefined;
    await writeStep(step.edits, "undo", steps.wasTakenBack);
    return step.field;
  };
  const putBack = async (): Promise<void> => {
    const edits = steps.takePutBack(now.state);
    if (edits) await writeStep(edits, "put back", steps.wasPutBack);
  };
  const keepPhoto = async (bytes: ArrayBuffer | Uint8Array, mime: string): Promise<string> => {
    const { hash, safe } = await photos.put(bytes, mime);
    if (!safe) {
      unsafePhotos = true;
      moved();
    }
    return hash;
  };
  const retry = async () => {
    unsafePhotos = !(await photos.offerAgain());
    await queue.retry();
    moved();
  };
  const markExported = async () => {
    await meta.setExported(maker.clock);
    show(now);
  };
  const importText: LiveBook["importText"] = async (text) => {
    const content = importFile(text);
    if (content.kind !== "known") return content;
    const clash = await checkReuse(byId, content.value.changes);
    if (clash.kind !== "known") return clash;
    for (const photo of content.value.photos) await keepPhoto(photo.bytes, photo.mime);
    const fresh = content.value.changes.filter((change) => !byId.has(change.id));
    await keep(fresh);
    return known({ added: fresh.length });
  };

  for (const change of start.changes) maker.observe(change.at);
  takeIn(early);
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
      return steps.any;
    },
    putBack,
    get canPutBack() {
      return steps.anyTakenBack;
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
    importText,
    closeVisit: async (visitId) => {
      await queue.settled();
      await disk?.close(visitId);
    },
    get unsent() {
      let count = 0;
      for (const change of byId.values()) if (change.at > meta.exported && change.kind !== "draft") count++;
      return count;
    },
    get storage() {
      return refused() ? "refused" : "ok";
    },
    get keeping() {
      return queue.waiting > 0;
    },
    settled: queue.settled,
    retry,
    get clockAhead() {
      return maker.clockAhead;
    },
    keepFirstList: async (list) => {
      const changes = byId.size;
      await queue.settled();
      if (!refused()) await meta.setFirstList(list, changes);
    },
    place: meta.place,
    setPlace: meta.setPlace,
    close: () => {
      queue.stop();
      disk?.stop();
      meta.release();
    },
  };
}

/** Ids that came with another content than ours are refused loudly, before anything is taken in. */
async function checkReuse(ours: ReadonlyMap<string, Change>, theirs: readonly Change[]) {
  const scratch = memoryStore();
  await scratch.append(theirs.flatMap((change) => ours.get(change.id) ?? []));
  return scratch.append(theirs);
}
