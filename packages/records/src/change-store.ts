import type { Outcome } from "@tapside/quantities";
import type { Change } from "./change.ts";

/** Where changes are kept. Every adapter passes the same suite, `test-support/store-contract.ts`. */
export interface ChangeStore {
  /**
   * Keeps all of these changes or none; known once they are safe. Changes already kept are passed over;
   * an id that is kept with another content is refused with `id-reused`, a full or closed disk with `storage-refused`.
   */
  append(changes: readonly Change[]): Promise<Outcome<{ readonly added: number }>>;
  /** Every change kept, in no particular order. */
  all(): Promise<Outcome<readonly Change[]>>;
  /** Hears of every newly kept change, through whichever handle of the same store it came. Returns the way out. */
  subscribe(listener: (changes: readonly Change[]) => void): () => void;
}
