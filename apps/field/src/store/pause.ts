/** Lets the page draw and take touches between two stretches of long work. */
export const pause = (): Promise<void> => new Promise((goOn) => setTimeout(goOn, 0));

/** How long the page may be held up at a time: a finger does not feel it. */
const HELD_MS = 40;

/** Asked between short pieces of long work; lets go of the page only when it has been held for long enough, for letting go costs too. */
export function pauses(): () => Promise<void> | undefined {
  let since = performance.now();
  return () => {
    if (performance.now() - since < HELD_MS) return undefined;
    return pause().then(() => {
      since = performance.now();
    });
  };
}

/** Runs work that stops now and then, resting between. */
export async function inStretches<T>(work: Generator<void, T>, rest = pauses()): Promise<T> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    await rest();
  }
}
