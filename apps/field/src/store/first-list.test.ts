import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { bookDatabase } from "./databases.ts";
import type { FirstList } from "./first-list.ts";
import { openBook } from "./open-book.ts";

let count = 0;
const fresh = () => `first-list-${++count}`;
const ELM = { id: "u1", title: "Elm Street School", fixed: false, text: "elm", facts: { openPoints: 0 } };
const LIST: FirstList = { day: "2026-03-01", planned: 1, parts: 2, unsent: 3, lines: [ELM] };

/** What a book opened now tells before it is read. */
async function toldBy(name: string): Promise<readonly FirstList[]> {
  const told: FirstList[] = [];
  (await openBook(name, (list) => told.push(list))).close();
  return told;
}

async function withList() {
  const name = fresh();
  const live = await openBook(name);
  await live.write("site", "s1", { name: "Elm" });
  await live.keepFirstList(LIST);
  return { name, live };
}

test("a list without units is not told: the book itself is there as soon", async () => {
  const name = fresh();
  const live = await openBook(name);
  await live.keepFirstList({ ...LIST, lines: [] });
  live.close();
  const told: FirstList[] = [];
  await openBook(name, (list) => told.push(list));
  expect(told).toEqual([]);
});

test("what the first screen said is told at once when the book is opened again", async () => {
  const { name, live } = await withList();
  live.close();
  expect(await toldBy(name)).toEqual([LIST]);
});

test("after any change, undo, or import it is not told until it was made again", async () => {
  const { name, live } = await withList();
  await live.write("visit", "v1", { kind: "annual" });
  expect(await toldBy(name)).toEqual([]);
  await live.keepFirstList(LIST);
  expect(await toldBy(name)).toEqual([LIST]);
  await live.undo();
  expect(await toldBy(name)).toEqual([]);
  await live.keepFirstList(LIST);
  const other = await openBook(fresh());
  await other.write("site", "s2", { name: "Oak" });
  await live.importText(await other.exportText());
  expect(await toldBy(name)).toEqual([]);
});

test("a list made while the disk is still behind is kept once it has caught up", async () => {
  const live = await openBook(fresh());
  const writing = live.write("site", "s1", { name: "Elm" });
  expect(live.keeping).toBe(true);
  await live.keepFirstList(LIST);
  await writing;
  expect(await toldBy(live.name)).toEqual([LIST]);
});

test("a tab that has not heard of another's change does not keep its list; a packed visit changes nothing", async () => {
  const { name, live } = await withList();
  await live.write("visit", "v1", { kind: "annual" });
  await live.closeVisit("v1");
  await live.keepFirstList(LIST);
  expect(await toldBy(name)).toEqual([LIST]);
  const db = bookDatabase(name);
  await db.meta.update("kept", { value: 99 });
  await live.keepFirstList({ ...LIST, planned: 7 });
  expect(await toldBy(name)).toEqual([]);
});

test("a database that never counted its changes counts them when it is opened", async () => {
  const { name, live } = await withList();
  live.close();
  const db = bookDatabase(name);
  await db.meta.delete("kept");
  expect(await toldBy(name)).toEqual([]);
  expect(await db.meta.get("kept")).toEqual({ name: "kept", value: 1 });
});

test("a list of another build is not told, nor one when the hands were in a visit", async () => {
  const { name, live } = await withList();
  await live.setPlace(JSON.stringify({ path: "/visit/v1/ask", ms: Date.now() }));
  expect(await toldBy(name)).toEqual([]);
  await live.setPlace(JSON.stringify({ path: "/visit/v1/ask", ms: Date.now() - 20 * 3600 * 1000 }));
  expect(await toldBy(name)).toEqual([LIST]);
  const db = bookDatabase(name);
  const row = await db.meta.get("list");
  await db.meta.put({ name: "list", value: { ...(row?.value as object), programme: "another" } });
  expect(await toldBy(name)).toEqual([]);
});
