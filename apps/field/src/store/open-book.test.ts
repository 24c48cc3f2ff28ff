import "fake-indexeddb/auto";
import { storeContract } from "@tapside/records/test-support";
import { afterEach, expect, test, vi } from "vitest";
import { bookDatabase } from "./databases.ts";
import { dexieStore } from "./dexie-store.ts";
import { openAhead, openBook } from "./open-book.ts";

let count = 0;
const fresh = () => `test-${++count}`;

afterEach(() => vi.restoreAllMocks());

storeContract("Dexie store", async () => dexieStore(bookDatabase(fresh())));

test("what was written is there when the book is opened again", async () => {
  const name = fresh();
  const first = await openBook(name);
  await first.write("site", "s1", { name: "Elm Street School" });
  first.close();
  const second = await openBook(name);
  expect(second.snapshot().book.site.get("s1")).toEqual({ id: "s1", name: "Elm Street School" });
  expect(second.storage).toBe("ok");
});

test("a book whose database was opened ahead is the same, once", async () => {
  const name = fresh();
  const first = await openBook(name);
  await first.write("site", "s1", { name: "Elm Street School" });
  first.close();
  openAhead(name);
  const second = await openBook(name);
  expect(second.snapshot().book.site.get("s1")?.name).toBe("Elm Street School");
  second.close();
  const third = await openBook(name);
  await third.write("site", "s2", { name: "Oak" });
  expect(third.storage).toBe("ok");
});

test("the screen has the change before the disk has it", async () => {
  const live = await openBook(fresh());
  const heard = vi.fn();
  live.subscribe(heard);
  const safe = live.write("site", "s1", { name: "Elm" });
  expect(live.snapshot().book.site.get("s1")?.name).toBe("Elm");
  expect(heard).toHaveBeenCalled();
  await safe;
});

test("undo takes back the newest step, several records at once, and stops at the beginning", async () => {
  const live = await openBook(fresh());
  await live.write("site", "s1", { name: "Elm" });
  await live.write("draft", "d", { typed: "4" }, { undoable: false });
  await live.writeAll([
    { kind: "site", record: "s1", fields: { name: "Oak" } },
    { kind: "point", record: "p1", fields: { site: "s1" } },
  ]);
  expect(await live.undo()).toBe("name");
  expect(live.snapshot().book.site.get("s1")?.name).toBe("Elm");
  expect(live.snapshot().book.point.size).toBe(0);
  await live.undo();
  expect(live.snapshot().book.site.size).toBe(0);
  expect(live.field("d", "typed")).toBe("4");
  expect(live.canUndo).toBe(false);
  expect(await live.undo()).toBeUndefined();
});

test("what was taken back can be put back, step by step, until something new is written", async () => {
  const live = await openBook(fresh());
  await live.write("site", "s1", { name: "Elm" });
  await live.write("site", "s1", { name: "Oak" });
  expect(live.canPutBack).toBe(false);
  await live.undo();
  await live.undo();
  expect(live.snapshot().book.site.size).toBe(0);
  await live.putBack();
  expect(live.snapshot().book.site.get("s1")?.name).toBe("Elm");
  await live.putBack();
  expect(live.snapshot().book.site.get("s1")?.name).toBe("Oak");
  expect(live.canPutBack).toBe(false);
  await live.putBack();
  await live.undo();
  expect(live.snapshot().book.site.get("s1")?.name).toBe("Elm");
  await live.write("site", "s1", { name: "Ash" });
  expect(live.canPutBack).toBe(false);
  expect(live.snapshot().book.site.get("s1")?.name).toBe("Ash");
});

test("a closed visit is one row, is read back whole, and takes later changes", async () => {
  const name = fresh();
  const live = await openBook(name);
  await live.write("visit", "v1", { kind: "annual" });
  await live.write("visit", "v1", { closed: true });
  await live.closeVisit("v1");
  const db = bookDatabase(name);
  expect([await db.changes.count(), await db.closed.count()]).toEqual([0, 1]);
  await live.write("visit", "v1", { technician: "Ines" });
  live.close();
  const again = await openBook(name);
  expect(again.snapshot().book.visit.get("v1")).toMatchObject({
    kind: "annual",
    closed: true,
    technician: "Ines",
  });
  const text = await again.exportText();
  expect(await again.importText(text)).toEqual({ kind: "known", value: { added: 0 } });
});

test("export and import carry everything into an empty book, photos too", async () => {
  const live = await openBook(fresh());
  await live.write("site", "s1", { name: "Elm" });
  const hash = await live.putPhoto(Uint8Array.from([1, 2, 3]), "image/jpeg");
  expect(live.unsent).toBe(1);
  const text = await live.exportText();
  expect(live.unsent).toBe(0);
  const other = await openBook(fresh());
  expect(await other.importText(text)).toEqual({ kind: "known", value: { added: 1 } });
  expect(other.snapshot().book).toEqual(live.snapshot().book);
  expect((await other.getPhoto(hash))?.bytes).toEqual(Uint8Array.from([1, 2, 3]));
  expect(await other.importText(text.slice(0, 40))).toMatchObject({ kind: "refused" });
});

test("two tabs on one book see each other's changes", async () => {
  const name = fresh();
  const [one, two] = [await openBook(name), await openBook(name)];
  await one.write("site", "s1", { name: "Elm" });
  await vi.waitFor(() => expect(two.snapshot().book.site.get("s1")?.name).toBe("Elm"));
  await two.write("site", "s1", { name: "Oak" });
  await vi.waitFor(() => expect(one.snapshot().book.site.get("s1")?.name).toBe("Oak"));
  one.close();
  two.close();
});

test("a phone that refuses storage keeps the book in memory, says so and can export", async () => {
  vi.spyOn(indexedDB, "open").mockImplementation(() => {
    throw new DOMException("private", "SecurityError");
  });
  const live = await openBook(fresh());
  expect(live.storage).toBe("refused");
  await live.write("site", "s1", { name: "Elm" });
  expect(live.snapshot().book.site.get("s1")?.name).toBe("Elm");
  expect(await live.exportText()).toContain("Elm");
});

test("a disk that fills up later is said, and what it refused is offered again", async () => {
  const name = fresh();
  const live = await openBook(name);
  const full = vi.spyOn(IDBObjectStore.prototype, "add").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  await live.write("site", "s1", { name: "Elm" });
  expect(live.storage).toBe("refused");
  full.mockRestore();
  await live.write("site", "s2", { name: "Oak" });
  expect(live.storage).toBe("ok");
  live.close();
  expect((await openBook(name)).snapshot().book.site.size).toBe(2);
});

test("a lost connection is opened again and the change kept", async () => {
  const live = await openBook(fresh());
  const once = vi.spyOn(IDBObjectStore.prototype, "add").mockImplementationOnce(() => {
    throw new DOMException(
      "Connection to Indexed Database server lost. Refresh the page to try again",
      "UnknownError",
    );
  });
  await live.write("site", "s1", { name: "Elm" });
  expect(once).toHaveBeenCalled();
  expect(live.storage).toBe("ok");
});

test("text that a later database would alter is not taken in", async () => {
  const live = await openBook(fresh());
  await expect(live.write("site", "s1", { name: "a\0b" })).rejects.toThrow("text-has-nul");
  expect(live.snapshot().book.site.size).toBe(0);
});

test("what is written counts as being kept until it is on the disk; settling waits for that", async () => {
  const name = fresh();
  const live = await openBook(name);
  expect(live.keeping).toBe(false);
  void live.write("site", "s1", { name: "Elm" });
  expect(live.keeping).toBe(true);
  await live.settled();
  expect([live.keeping, await bookDatabase(name).changes.count()]).toEqual([false, 1]);
});

test("a digit of a draft leaves the book the same, so that nothing is judged again", async () => {
  const live = await openBook(fresh());
  await live.write("site", "s1", { name: "Elm" });
  const { book } = live.snapshot();
  await live.write("draft", "d", { typed: "4" }, { undoable: false });
  expect(live.snapshot().book).toBe(book);
});

test("photos a full disk refused are offered again", async () => {
  const live = await openBook(fresh());
  const full = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  const hash = await live.putPhoto(Uint8Array.from([1, 2, 3]), "image/jpeg");
  expect(live.storage).toBe("refused");
  full.mockRestore();
  await live.retry();
  expect(live.storage).toBe("ok");
  expect((await live.getPhoto(hash))?.bytes).toEqual(Uint8Array.from([1, 2, 3]));
});
