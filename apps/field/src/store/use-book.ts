import {
  createContext,
  createElement,
  type ReactNode,
  useContext,
  useEffect,
  useState,
  useSyncExternalStore,
} from "react";
import { type LiveBook, openBook, type Snapshot } from "./open-book.ts";

const BookContext = createContext<LiveBook | undefined>(undefined);

interface BookProviderProps {
  /** Name of the database: "tapside", or "tapside-demo" for the demo book. */
  readonly name: string;
  /** Shown until the book is open. */
  readonly waiting?: ReactNode;
  readonly children: ReactNode;
}

/** Opens a book for everything below it. */
export function BookProvider({ name, waiting, children }: BookProviderProps): ReactNode {
  const [live, setLive] = useState<LiveBook>();
  useEffect(() => {
    let wanted = true;
    let opened: LiveBook | undefined;
    void openBook(name).then((book) => {
      opened = book;
      if (wanted) setLive(book);
      else book.close();
    });
    return () => {
      wanted = false;
      setLive(undefined);
      opened?.close();
    };
  }, [name]);
  if (live?.name !== name) return waiting ?? null;
  return createElement(BookContext.Provider, { value: live }, children);
}

/** The open book and its present snapshot; the screen is drawn again whenever it changes. */
export function useBook(): { readonly live: LiveBook; readonly snapshot: Snapshot } {
  const live = useContext(BookContext);
  if (!live) throw new Error("useBook needs a BookProvider above it");
  return { live, snapshot: useSyncExternalStore(live.subscribe, live.snapshot) };
}
