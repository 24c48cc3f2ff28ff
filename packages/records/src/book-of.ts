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
  vanEntry: 0,
  sensorLog: 0,
} satisfies Record<KindId, 0>) as readonly KindId[];

type Shelf = Map<string, Kept<Kinds[KindId]>>;

interface Earlier {
  readonly state: State;
  readonly book: Book;
}

/**
 * The book as it stands in this state: retracted records and fields that were taken back (null) are left
 * out, unknown kinds too. Given the book of an earlier state, records that did not change are the same objects,
 * and a book in which nothing changed is the same book: a digit of a draft costs no judgement.
 */
export function bookOf(state: State, earlier?: Earlier): Book {
  const shelves = emptyShelves();
  for (const record of state.records.values()) put(shelves, record, earlier);
  if (!earlier) return shelves as unknown as Book;
  for (const kind of KIND_IDS) shelves[kind] = sameShelf(earlier.book[kind] as Shelf, shelves[kind]);
  const same = KIND_IDS.every((kind) => shelves[kind] === (earlier.book[kind] as Shelf));
  return same ? earlier.book : (shelves as unknown as Book);
}

const RECORDS_A_STRETCH = 50;

/** The same book as `bookOf` makes, a stretch at a time. */
export function* bookInStretches(state: State): Generator<void, Book> {
  const shelves = emptyShelves();
  let count = 0;
  for (const record of state.records.values()) {
    put(shelves, record);
    if (++count % RECORDS_A_STRETCH === 0) yield;
  }
  return shelves as unknown as Book;
}

const emptyShelves = () =>
  Object.fromEntries(KIND_IDS.map((kind) => [kind, new Map()])) as Record<KindId, Shelf>;

function put(shelves: Record<KindId, Shelf>, record: RecordState, earlier?: Earlier): void {
  if (!isKind(record.kind) || record.fields.get(GONE)?.value === true) return;
  const same = earlier?.state.records.get(record.id) === record;
  const kept = same ? earlier?.book[record.kind].get(record.id) : undefined;
  shelves[record.kind].set(record.id, kept ?? keptOf(record));
}

const KINDS: ReadonlySet<string> = new Set(KIND_IDS);
const isKind = (kind: string): kind is KindId => KINDS.has(kind);

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

function keptVisit(id: string, all: Fields): KeptVisit {
  const { "": plain = [], ...by } = byPrefix(all);
  const reading = (phase: Phase) => unpack(by.reading, isReadingValue, `${phase}:`);
  const steps = unpack(by.step, isStepValue);
  const timers = unpack(by.timer, isTimerValue);
  return {
    ...Object.fromEntries(plain),
    id,
    readings: { asFound: reading("asFound"), asLeft: reading("asLeft") },
    answers: unpack(by.answer, (value) => value !== null),
    exceptions: unpack(by.exception, isExceptionValue),
    work: unpack(by.work, isWorkValue),
    photos: unpack(by.photo, isPhotoValue),
    ...(Object.keys(steps).length > 0 && { steps }),
    ...(Object.keys(timers).length > 0 && { timers }),
    skipped: Object.keys(unpack(by.skip, (value) => value === true)).sort(),
  } as unknown as KeptVisit;
}

/** Fields by what stands before their first colon, without it; those without one under "". */
function byPrefix(fields: Fields): Readonly<Record<string, Fields | undefined>> {
  const groups: Record<string, [string, FieldValue][]> = Object.create(null);
  for (const [name, value] of fields) {
    const colon = name.indexOf(":");
    const prefix = name.slice(0, Math.max(colon, 0));
    groups[prefix] = groups[prefix] ?? [];
    groups[prefix].push([name.slice(colon + 1), value]);
  }
  return groups;
}

function unpack(fields: Fields | undefined, fits: (value: FieldValue) => boolean, within = "") {
  const own = (fields ?? []).filter(([name, value]) => name.startsWith(within) && fits(value));
  return Object.fromEntries(own.map(([name, value]) => [name.slice(within.length), value]));
}
