import { Screen } from "../look/screen.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";

/** A place that leads nowhere any more still leads on: to the book, and to what was here if it was taken back just now. */
export function Gone() {
  const { live } = useBook();
  const book = { label: words.book, to: "/" };
  const takenBack = live.canPutBack;
  const keys = takenBack
    ? { back: book, next: { label: words.putBack, onPress: () => void live.putBack() } }
    : { next: book };
  return (
    <Screen title={words.app} {...keys}>
      <p className="band">{takenBack ? words.takenBack : words.noSuch}</p>
    </Screen>
  );
}
