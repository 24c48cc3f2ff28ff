/** A tap ends its typing before it reaches what it was aimed at; that must still be there then. */
const TAP_MS = 300;

/** Resolves once nobody is in the middle of typing or pressing, so that what is under the hand can be exchanged. */
export function handsFree(): Promise<void> {
  const ends = ["focusout", "hashchange", "input"] as const;
  const busy = () =>
    document.querySelector(":active:not(html, body)") !== null ||
    (document.activeElement instanceof HTMLInputElement && document.activeElement.value !== "");
  if (!busy()) return Promise.resolve();
  return new Promise((free) => {
    const look = () =>
      setTimeout(() => {
        if (busy()) return;
        for (const end of ends) removeEventListener(end, look);
        removeEventListener("pointerup", look);
        free();
      }, TAP_MS);
    for (const end of ends) addEventListener(end, look);
    addEventListener("pointerup", look);
  });
}
