import { known, type Outcome, refused } from "@tapside/quantities";
import type { Change } from "@tapside/records";
import { afterEach, expect, test, vi } from "vitest";
import type { DexieStore } from "./dexie-store.ts";
import { diskQueue } from "./disk-queue.ts";

const change = (id: string): Change => ({
  id,
  record: "r",
  kind: "site",
  fields: { name: id },
  at: "2026-03-02T08:00:00.000Z/0000",
  device: "d",
  schema: 1,
});

/** A disk that answers when told to. */
function slowDisk() {
  const kept: string[] = [];
  const answers: ((outcome: Outcome<{ readonly added: number }>) => void)[] = [];
  const disk = {
    append: (changes: readonly Change[]) =>
      new Promise<Outcome<{ readonly added: number }>>((done) =>
        answers.push((outcome) => {
          if (outcome.kind === "known") kept.push(...changes.map((one) => one.id));
          done(outcome);
        }),
      ),
  } as unknown as DexieStore;
  return { disk, kept, answers };
}

afterEach(() => {
  vi.useRealTimers();
});

test("what was handed in counts as waiting until the disk has it", async () => {
  const { disk, kept, answers } = slowDisk();
  const moved = vi.fn();
  const queue = diskQueue(disk, moved);
  const first = queue.keep([change("a")]);
  await vi.waitFor(() => expect(answers).toHaveLength(1));
  void queue.keep([change("b")]);
  expect(queue.waiting).toBe(2);
  answers[0]!(known({ added: 1 }));
  await first;
  expect([queue.waiting, kept]).toEqual([1, ["a"]]);
  await vi.waitFor(() => expect(answers).toHaveLength(2));
  answers[1]!(known({ added: 1 }));
  await queue.settled();
  expect([queue.waiting, queue.refused, kept]).toEqual([0, false, ["a", "b"]]);
  expect(moved).toHaveBeenCalled();
});

test("what the disk refused is offered again by itself, in order, and nothing is lost", async () => {
  vi.useFakeTimers();
  const { disk, kept, answers } = slowDisk();
  const queue = diskQueue(disk, () => {});
  const first = queue.keep([change("a")]);
  await vi.advanceTimersByTimeAsync(0);
  answers[0]!(refused("storage-refused"));
  await first;
  expect([queue.refused, queue.waiting]).toEqual([true, 1]);
  await vi.advanceTimersByTimeAsync(6000);
  answers[1]!(known({ added: 1 }));
  await queue.settled();
  expect([queue.refused, queue.waiting, kept]).toEqual([false, 0, ["a"]]);
  queue.stop();
});

test("without a disk everything stays in memory and is said to be refused", async () => {
  const queue = diskQueue(undefined, () => {});
  await queue.keep([change("a")]);
  expect([queue.refused, queue.waiting]).toEqual([true, 1]);
});
