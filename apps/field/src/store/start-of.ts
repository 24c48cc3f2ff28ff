import { type Book, bookInStretches, type Change, EMPTY_STATE, fold, type State } from "@tapside/records";
import { inStretches, pauses } from "./pause.ts";

/** The book as its database holds it. */
export interface Start {
  readonly changes: readonly Change[];
  readonly state: State;
  readonly book: Book;
}

const CHANGES_A_STRETCH = 250;

/** Folds what is stored a stretch at a time: folding bit by bit gives what folding everything at once gives. */
export async function startOf(changes: readonly Change[]): Promise<Start> {
  const rest = pauses();
  let state = EMPTY_STATE;
  for (let from = 0; from < changes.length; from += CHANGES_A_STRETCH) {
    state = fold(state, changes.slice(from, from + CHANGES_A_STRETCH));
    await rest();
  }
  return { changes, state, book: await inStretches(bookInStretches(state), rest) };
}
