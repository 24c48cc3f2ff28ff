import {
  createContext,
  createElement,
  type ReactNode,
  useContext,
  useEffect,
  useState,
  useSyncExternalStore,
} from "react";
import type { FirstList } from "./first-list.ts";
import { handsFree } from "./hands-free.ts";
import { type LiveBook, openBook, type Snapshot } from "./open-book.ts";

export type { LiveBook };

const BookContext = createContext<LiveBook | undefined>(undefined);

interface BookProviderProps {
  /** Name of the database: "tapside", or "tapside-demo" for the demo book. */
  readonly name: string;
  /** Shown until the book is open, with what its first screen said last where that still holds. */
  readonly waiting?: (list: FirstList | undefined) => ReactNode;
  /** What the first screen needs to be made, done a stretch at a time before it is shown. */
  readonly prepare?: (book: LiveBook) => Promise<void>;
  readonly children: ReactNode;
}

/** Opens a book for everything below it. */
export function BookProvider({ name, waiting, prepare, children }: BookProviderProps): ReactNode {
  const [live, setLive] = useState<LiveBook>();
  const [list, setList] = useState<FirstList>();
  useEffect(() => {
    let wanted = true;
    let opened: LiveBook | undefined;
    void openBook(name, setList).then(async (book) => {
      opened = book;
      if (wanted) await prepare?.(book);
      if (wanted) await handsFree();
      if (wanted) setLive(book);
      else book.close();
    });
    return () => {
      wanted = false;
      setLive(undefined);
      setList(undefined);
      opened?.close();
    };
  }, [name, prepare]);
  if (live?.name !== name) return waiting?.(list) ?? null;
  return createElement(BookContext.Provider, { value: live }, children);
}

/** The open book and its present snapshot; the screen is drawn again whenever it changes. */
export function useBook(): { readonly live: LiveBook; readonly snapshot: Snapshot } {
  const live = useContext(BookContext);
  if (!live) throw new Error("useBook needs a BookProvider above it");
  return { live, snapshot: useSyncExternalStore(live.subscribe, live.snapshot) };
}
