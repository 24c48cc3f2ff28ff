import { expect, test } from "vitest";
import { bookOf } from "./book-of.ts";
import type { Change, FieldValue } from "./change.ts";
import { EMPTY_STATE, fold } from "./fold.ts";
import { undoOf } from "./undo.ts";

const edit = (n: number, fields: Record<string, FieldValue>): Change => ({
  id: `c${n}`,
  record: "r",
  kind: "site",
  fields,
  at: `2026-03-02T08:00:0${n}.000Z/0000`,
  device: "d",
  schema: 1,
});

test("taking a change back gives the book before it", () => {
  const before = fold(EMPTY_STATE, [edit(1, { name: "Elm" })]);
  const change = edit(2, { name: "Oak", notes: "new" });
  const after = fold(before, [change]);
  const undone = fold(after, [edit(3, undoOf(change, before, after))]);
  expect(bookOf(undone)).toEqual(bookOf(before));
});

test("taking back the change that made a record retracts it", () => {
  const change = edit(1, { name: "Elm" });
  const after = fold(EMPTY_STATE, [change]);
  expect(undoOf(change, EMPTY_STATE, after)).toEqual({ name: null, $gone: true });
});

test("what was written since is left alone", () => {
  const before = fold(EMPTY_STATE, [edit(1, { name: "Elm" })]);
  const change = edit(2, { name: "Oak", notes: "new" });
  const now = fold(before, [change, edit(3, { name: "Ash" })]);
  expect(undoOf(change, before, now)).toEqual({ notes: null });
});
