import { afterEach, expect, test, vi } from "vitest";
import { fakeLocks } from "./fake-locks.test-helper.ts";
import { holdVisitOpen } from "./visit-lock.ts";

afterEach(() => vi.unstubAllGlobals());

test("the lock is held from the opening of a visit to its end, by each screen that shows one", async () => {
  const locks = fakeLocks();
  vi.stubGlobal("navigator", { locks });
  const [one, two] = [holdVisitOpen(), holdVisitOpen()];
  expect(locks.held()).toEqual(["visit-open", "visit-open"]);
  one();
  await vi.waitFor(() => expect(locks.held()).toEqual(["visit-open"]));
  two();
  await vi.waitFor(() => expect(locks.held()).toEqual([]));
});

test("where there are no locks, or they are refused, the visit goes on", async () => {
  vi.stubGlobal("navigator", {});
  expect(() => holdVisitOpen()()).not.toThrow();
  vi.stubGlobal("navigator", { locks: { request: () => Promise.reject(new Error("SecurityError")) } });
  expect(() => holdVisitOpen()()).not.toThrow();
});
