import type { Outcome } from "@tapside/quantities";
import type { Book, FieldValue, Photo, State } from "@tapside/records";
import type { FirstList } from "./first-list.ts";

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
  /** Puts back the step taken back last; does nothing when there is none, or something was written since. */
  putBack(): Promise<void>;
  readonly canPutBack: boolean;
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
  /** "refused": what is in the book is held in memory only, and is offered to the disk again and again. */
  readonly storage: "ok" | "refused";
  /** Something written is not yet on the disk. */
  readonly keeping: boolean;
  /** Resolves when everything written so far is safe on the disk, or held in memory if `storage` is "refused". */
  settled(): Promise<void>;
  /** Offers the disk what it refused once more. */
  retry(): Promise<void>;
  /** A change taken in carries a time more than a day ahead of this phone's clock. */
  readonly clockAhead: boolean;
  /** Where in the app the hands were when it was last open. */
  place(): Promise<string | undefined>;
  setPlace(text: string): Promise<void>;
  /** Keeps what the first screen says, to be shown at once when the book is opened next; does nothing while something waits for the disk. */
  keepFirstList(list: FirstList): Promise<void>;
  close(): void;
}
