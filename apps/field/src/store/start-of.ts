import { type Book, bookOf, type Change, EMPTY_STATE, fold, type State } from "@tapside/records";
import { PIECES, pause } from "./pause.ts";

/** The book as its database holds it. */
export interface Start {
  readonly changes: readonly Change[];
  readonly state: State;
  readonly book: Book;
}

/** Folds what is stored a stretch at a time: folding bit by bit gives what folding everything at once gives. */
export async function startOf(changes: readonly Change[]): Promise<Start> {
  let state = EMPTY_STATE;
  let book = bookOf(state);
  for (let from = 0; from < changes.length; from += PIECES) {
    const before = state;
    state = fold(before, changes.slice(from, from + PIECES));
    book = bookOf(state, { state: before, book });
    await pause();
  }
  return { changes, state, book };
}
