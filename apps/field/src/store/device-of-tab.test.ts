import "fake-indexeddb/auto";
import { afterEach, expect, test, vi } from "vitest";
import { bookDatabase } from "./databases.ts";
import { deviceOfTab } from "./device-of-tab.ts";
import { fakeLocks } from "./fake-locks.test-helper.ts";

afterEach(() => vi.unstubAllGlobals());

test("each tab has an id of its own, and one that ends gives its id back", async () => {
  vi.stubGlobal("navigator", { locks: fakeLocks() });
  const db = bookDatabase("device-of-tab");
  let count = 0;
  const newId = () => `id-${++count}`;
  const first = await deviceOfTab(db, newId);
  const second = await deviceOfTab(db, newId);
  expect(second.id).not.toBe(first.id);
  first.release();
  await vi.waitFor(async () => expect((await deviceOfTab(db, newId)).id).toBe(first.id));
});

test("without a disk there is a fresh id, without locks the phone's own", async () => {
  expect((await deviceOfTab(undefined, () => "fresh")).id).toBe("fresh");
  vi.stubGlobal("navigator", {});
  const db = bookDatabase("device-without-locks");
  const ids = [await deviceOfTab(db, () => "own"), await deviceOfTab(db, () => "other")];
  expect(ids.map((one) => one.id)).toEqual(["own", "own"]);
});
