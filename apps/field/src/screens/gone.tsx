import { Screen } from "../look/screen.tsx";
import { bookWords as words } from "../words/book.ts";

/** A place that leads nowhere any more still leads back. */
export const Gone = () => (
  <Screen title={words.app} next={{ label: words.book, to: "/" }}>
    <p className="band">{words.noSuch}</p>
  </Screen>
);
