import type { Press } from "../look/screen.tsx";
import type { LiveBook } from "../store/open-book.ts";
import { bookWords as words } from "../words/book.ts";

/** The undo key of a set-up screen; leads back when there is nothing to take back. */
export const undoOrBack = (live: LiveBook, to: string): Press =>
  live.canUndo ? { label: words.undo, onPress: () => void live.undo() } : { label: words.back, to };
