import { canonicalJson } from "./canonical-json.ts";
import { type Change, type FieldValue, GONE } from "./change.ts";
import type { State } from "./fold.ts";

/**
 * The fields of the change that takes `change` back, given the state before it and the state now. Fields that
 * no longer hold what the change wrote are left alone: someone has written them since. A record that came into being with it is retracted.
 */
export function undoOf(change: Change, before: State, now: State): Readonly<Record<string, FieldValue>> {
  const was = before.records.get(change.record);
  const is = now.records.get(change.record);
  const ours = Object.keys(change.fields).filter((name) =>
    same(is?.fields.get(name)?.value, change.fields[name]),
  );
  const back = ours.map((name): [string, FieldValue] => [name, was?.fields.get(name)?.value ?? null]);
  if (ours.includes(GONE) && !was?.fields.has(GONE)) back.push([GONE, false]);
  if (!was && ours.length > 0) back.push([GONE, true]);
  return Object.fromEntries(back);
}

const same = (a: FieldValue | undefined, b: FieldValue | undefined): boolean =>
  a !== undefined && b !== undefined && canonicalJson(a) === canonicalJson(b);
