import type { DueReason } from "@tapside/book";
import type { BookDatabase } from "./databases.ts";
import { isInVisit, placeOf } from "./place.ts";

/** What the list says of one unit, kept so that it can be shown before the book is open. */
export interface FirstLine {
  readonly id: string;
  readonly title: string;
  readonly fixed: boolean;
  /** What it is found by. */
  readonly text: string;
  readonly facts: LineFacts;
}

/** What a unit's line is made of; the sentence itself hangs on the day it is read. */
export interface LineFacts {
  readonly first?: DueReason;
  readonly openPoints: number;
  readonly lastVisit?: string;
}

/** The first screen as it was when the book was last at rest. */
export interface FirstList {
  /** The day the counts of `planned` and `parts` are for. */
  readonly day: string;
  readonly planned: number;
  readonly parts: number;
  readonly unsent: number;
  readonly lines: readonly FirstLine[];
}

/** The programme that made a list: another build may judge otherwise, so it does not trust it. */
const PROGRAMME = import.meta.url;

interface Kept {
  readonly programme: string;
  readonly changes: number;
  readonly list: FirstList;
}

/** How many changes the database keeps; counted up in the transaction that keeps them. */
export const KEPT = "kept";
const LIST = "list";

/**
 * The kept list, when it was made by this programme from exactly the changes the database keeps. Not while the hands were in a visit:
 * then the app opens there, and a list would be in the way.
 */
export async function readFirstList(db: BookDatabase, nowMs: number): Promise<FirstList | undefined> {
  const [kept, row, place] = await db.meta.bulkGet([KEPT, LIST, "place"]).catch(() => []);
  const was = placeOf(place && String(place.value));
  if (was && isInVisit(was, nowMs)) return undefined;
  const found = row?.value as Kept | undefined;
  return found?.programme === PROGRAMME && found.changes === kept?.value ? found.list : undefined;
}

/** Keeps the list, unless the database by now keeps other changes than the `changes` it was made from. */
export async function keepFirstList(db: BookDatabase, list: FirstList, changes: number): Promise<void> {
  await db
    .transaction("rw", db.meta, async () => {
      if ((await db.meta.get(KEPT))?.value !== changes) return;
      await db.meta.put({ name: LIST, value: { programme: PROGRAMME, changes, list } satisfies Kept });
    })
    .catch(() => undefined);
}
