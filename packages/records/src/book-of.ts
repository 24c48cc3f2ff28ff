import type { Book, Kept, KeptVisit } from "./book.ts";
import { type FieldValue, GONE } from "./change.ts";
import type { RecordState, State } from "./fold.ts";
import {
  isExceptionValue,
  isPhotoValue,
  isReadingValue,
  isStepValue,
  isTimerValue,
  isWorkValue,
} from "./internal/field-shapes.ts";
import type { KindId, Kinds, Phase } from "./kinds.ts";

/** Every kind of record the book has a shelf for. */
export const KIND_IDS = Object.keys({
  site: 0,
  appliance: 0,
  limit: 0,
  waterAnalysis: 0,
  point: 0,
  unit: 0,
  part: 0,
  instrument: 0,
  visit: 0,
  openPoint: 0,
  serviceRecord: 0,
  settings: 0,
  ownership: 0,
  model: 0,
  move: 0,
  plan: 0,
  meterCheck: 0,
  causeCounts: 0,
} satisfies Record<KindId, 0>) as readonly KindId[];

type Shelf = Map<string, Kept<Kinds[KindId]>>;

/**
 * The book as it stands in this state: retracted records and fields that were taken back (null) are left
 * out, unknown kinds too. Given the book of an earlier state, records that did not change are the same objects,
 * and a book in which nothing changed is the same book: a digit of a draft costs no judgement.
 */
export function bookOf(state: State, earlier?: { readonly state: State; readonly book: Book }): Book {
  const shelves = Object.fromEntries(KIND_IDS.map((kind) => [kind, new Map()])) as Record<KindId, Shelf>;
  for (const [id, record] of state.records) {
    if (!isKind(record.kind) || record.fields.get(GONE)?.value === true) continue;
    const same = earlier?.state.records.get(id) === record;
    const kept = same ? earlier?.book[record.kind].get(id) : undefined;
    shelves[record.kind].set(id, kept ?? keptOf(record));
  }
  if (!earlier) return shelves as unknown as Book;
  for (const kind of KIND_IDS) shelves[kind] = sameShelf(earlier.book[kind] as Shelf, shelves[kind]);
  const same = KIND_IDS.every((kind) => shelves[kind] === (earlier.book[kind] as Shelf));
  return same ? earlier.book : (shelves as unknown as Book);
}

const isKind = (kind: string): kind is KindId => (KIND_IDS as readonly string[]).includes(kind);

function sameShelf(before: Shelf, after: Shelf): Shelf {
  if (before.size !== after.size) return after;
  for (const [id, kept] of after) if (before.get(id) !== kept) return after;
  return before;
}

function keptOf(record: RecordState): Kept<Kinds[KindId]> {
  const fields = [...record.fields]
    .filter(([name, field]) => field.value !== null && name !== GONE)
    .map(([name, field]) => [name, field.value] as const);
  return record.kind === "visit"
    ? keptVisit(record.id, fields)
    : { ...Object.fromEntries(fields), id: record.id };
}

type Fields = readonly (readonly [string, FieldValue])[];

function keptVisit(id: string, fields: Fields): KeptVisit {
  const reading = (phase: Phase) => unpack(fields, `reading:${phase}:`, isReadingValue);
  const steps = unpack(fields, "step:", isStepValue);
  const timers = unpack(fields, "timer:", isTimerValue);
  return {
    ...Object.fromEntries(fields.filter(([name]) => !name.includes(":"))),
    id,
    readings: { asFound: reading("asFound"), asLeft: reading("asLeft") },
    answers: unpack(fields, "answer:", (value) => value !== null),
    exceptions: unpack(fields, "exception:", isExceptionValue),
    work: unpack(fields, "work:", isWorkValue),
    photos: unpack(fields, "photo:", isPhotoValue),
    ...(Object.keys(steps).length > 0 && { steps }),
    ...(Object.keys(timers).length > 0 && { timers }),
    skipped: Object.keys(unpack(fields, "skip:", (value) => value === true)).sort(),
  } as unknown as KeptVisit;
}

function unpack(fields: Fields, prefix: string, fits: (value: FieldValue) => boolean) {
  const own = fields.filter(([name, value]) => name.startsWith(prefix) && fits(value));
  return Object.fromEntries(own.map(([name, value]) => [name.slice(prefix.length), value]));
}
