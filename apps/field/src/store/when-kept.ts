import type { LiveBook } from "./live-book.ts";

/** A disk slower than this does not hold up the hands; the screen then says that something is not kept yet. */
const LONGEST_WAIT_MS = 600;

/** While the root carries this class, touches wait. */
const KEEPING = "keeping";

/**
 * Goes on once everything written is safe, so that whoever sees the next screen knows the last one is kept. Touches and keys that come
 * meanwhile are made on the next screen, where a hand that did not wait has aimed them. What the screen refuses is put right first.
 */
export async function whenKept(live: Pick<LiveBook, "keeping" | "settled">, goOn: () => void): Promise<void> {
  const refused = document.querySelector<HTMLElement>("[aria-invalid=true]");
  if (refused) return refused.focus();
  if (!live.keeping) return goOn();
  const { classList } = document.documentElement;
  if (classList.contains(KEEPING)) return;
  classList.add(KEEPING);
  const made = catchTouches();
  await Promise.race([live.settled(), new Promise((done) => setTimeout(done, LONGEST_WAIT_MS))]);
  const again = made();
  classList.remove(KEEPING);
  goOn();
  for (const touch of again) {
    await new Promise((drawn) => setTimeout(drawn, 0));
    touch();
  }
}

/** Holds clicks and keys back; called again, stops and gives what was held back, each to be made anew. */
function catchTouches(): () => readonly (() => void)[] {
  const held: (() => void)[] = [];
  const onClick = (event: MouseEvent) => {
    event.stopImmediatePropagation();
    event.preventDefault();
    const { clientX, clientY } = event;
    held.push(() => document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>("button, a")?.click());
  };
  const onKey = (event: KeyboardEvent) => {
    event.stopImmediatePropagation();
    event.preventDefault();
    const { key } = event;
    held.push(() => document.body.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true })));
  };
  window.addEventListener("click", onClick, true);
  window.addEventListener("keydown", onKey, true);
  return () => {
    window.removeEventListener("click", onClick, true);
    window.removeEventListener("keydown", onKey, true);
    return held;
  };
}
