import type { Change } from "@tapside/records";
import type { DexieStore } from "./dexie-store.ts";

/** Changes on their way to the disk, in order. What it refuses stays here and is offered again. */
export interface DiskQueue {
  /** Resolves when these are safe, or refused for now. */
  keep(changes: readonly Change[]): Promise<void>;
  /** Resolves when everything handed in so far is safe, or refused for now. */
  settled(): Promise<void>;
  retry(): Promise<void>;
  /** How many are not on the disk. */
  readonly waiting: number;
  readonly refused: boolean;
  stop(): void;
}

const RETRY_MS = 5000;

/** `moved` is called whenever `waiting` or `refused` has changed. Without a disk everything is refused, for good. */
export function diskQueue(disk: DexieStore | undefined, moved: () => void): DiskQueue {
  let pending: readonly Change[] = [];
  let queue: Promise<void> = Promise.resolve();
  let refused = disk === undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const flush = async () => {
    if (!disk || pending.length === 0) return;
    const batch = new Set(pending);
    const outcome = await disk.append([...batch]);
    if (outcome.kind === "known") pending = pending.filter((change) => !batch.has(change));
    refused = outcome.kind !== "known";
    clearTimeout(timer);
    if (refused) timer = setTimeout(() => void offer(), RETRY_MS);
    moved();
  };
  const offer = () => {
    queue = queue.then(flush, flush);
    return queue;
  };
  return {
    keep: (changes) => {
      if (changes.length === 0) return queue;
      pending = [...pending, ...changes];
      const kept = offer();
      moved();
      return kept;
    },
    settled: () => queue,
    retry: offer,
    get waiting() {
      return pending.length;
    },
    get refused() {
      return refused;
    },
    stop: () => clearTimeout(timer),
  };
}
