import { known, type Outcome, refused } from "@tapside/quantities";
import type { Change } from "./change.ts";

/** The schema this version writes. */
export const SCHEMA = 1;

/** Turns a change of schema n into schema n + 1, keeping what it does not know verbatim. */
export type Migration = (change: Change) => Change;

/** `MIGRATIONS[n - 1]` leads from schema n to n + 1; consecutive, pure, never edited once shipped. */
export const MIGRATIONS: readonly Migration[] = [];

/** A change in today's schema, or "change-newer" when a later version of the app wrote it. */
export function migrate(change: Change, migrations: readonly Migration[] = MIGRATIONS): Outcome<Change> {
  const today = migrations.length + 1;
  if (change.schema > today) return refused("change-newer", { schema: change.schema, today });
  const steps = migrations.slice(change.schema - 1);
  return known(
    steps.reduce((now, step, index) => ({ ...step(now), schema: change.schema + index + 1 }), change),
  );
}
