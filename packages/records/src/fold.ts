import type { Change, FieldValue } from "./change.ts";

/** A value some change gave to a field. */
export interface Held {
  readonly value: FieldValue;
  readonly at: string;
  readonly change: string;
  readonly device: string;
}

/** A field as folded: the newest value wins; what was written at the same time elsewhere is kept beside. */
export interface FieldState extends Held {
  /** The newest value of each device, this one included. */
  readonly byDevice: readonly Held[];
  /** Ids of changes that were replaced knowingly. */
  readonly covered: readonly string[];
}

export interface RecordState {
  readonly id: string;
  readonly kind: string;
  /** Stamp and id of the change the kind is taken from. */
  readonly kindFrom: string;
  readonly fields: ReadonlyMap<string, FieldState>;
}

/** All records as folded from their changes, retracted ones and unknown kinds included. */
export interface State {
  readonly records: ReadonlyMap<string, RecordState>;
}

export const EMPTY_STATE: State = { records: new Map() };

/**
 * The state after some more changes. Order, duplicates and batching do not matter: every part of the
 * state is a maximum or a union, so folding bit by bit gives what folding everything at once gives.
 */
export function fold(state: State, changes: Iterable<Change>): State {
  const records = new Map(state.records);
  const opened = new Map<string, Map<string, FieldState>>();
  for (const change of changes) {
    let fields = opened.get(change.record);
    if (!fields) {
      fields = new Map(records.get(change.record)?.fields);
      opened.set(change.record, fields);
    }
    for (const [name, value] of Object.entries(change.fields)) {
      fields.set(name, foldField(fields.get(name), change, value));
    }
    records.set(change.record, { ...kindOf(records.get(change.record), change), id: change.record, fields });
  }
  return { records };
}

function kindOf(before: RecordState | undefined, change: Change): Pick<RecordState, "kind" | "kindFrom"> {
  const kindFrom = `${change.at} ${change.id}`;
  if (before && before.kindFrom >= kindFrom) return { kind: before.kind, kindFrom: before.kindFrom };
  return { kind: change.kind, kindFrom };
}

function foldField(before: FieldState | undefined, change: Change, value: FieldValue): FieldState {
  const held: Held = { value, at: change.at, change: change.id, device: change.device };
  if (!before) return { ...held, byDevice: [held], covered: change.over ? union(NONE, change.over) : NONE };
  const byDevice = withNewest(before.byDevice, held);
  const newest = byDevice.reduce(newerOf);
  return { ...newest, byDevice, covered: union(before.covered, change.over ?? NONE) };
}

const NONE: readonly string[] = [];

function withNewest(held: readonly Held[], next: Held): readonly Held[] {
  const own = held.find((other) => other.device === next.device);
  if (!own) return [...held, next].sort((a, b) => (a.device < b.device ? -1 : 1));
  return held.map((other) => (other === own ? newerOf(own, next) : other));
}

const newerOf = (a: Held, b: Held): Held => (a.at > b.at || (a.at === b.at && a.change >= b.change) ? a : b);

function union(a: readonly string[], b: readonly string[]): readonly string[] {
  return b.every((id) => a.includes(id)) ? a : [...new Set([...a, ...b])].sort();
}

/** Values written by other devices that nobody has knowingly replaced: the newest of each, the winner included. */
const heads = (field: FieldState): readonly Held[] =>
  field.byDevice.filter((held) => !field.covered.includes(held.change));

/** Values that lost to the field's value without its author having seen them, and that differ from it. */
export function rivalsOf(field: FieldState): readonly Held[] {
  const same = JSON.stringify(field.value);
  return heads(field).filter((held) => held.change !== field.change && JSON.stringify(held.value) !== same);
}

/** What a change by `device` to these fields replaces knowingly: goes into `Change.over`. */
export function replacedBy(
  device: string,
  record: RecordState | undefined,
  names: Iterable<string>,
): readonly string[] {
  const over = new Set<string>();
  for (const name of names) {
    const field = record?.fields.get(name);
    for (const held of field ? heads(field) : []) if (held.device !== device) over.add(held.change);
  }
  return [...over].sort();
}
