/** Work that stops for breath now and then, so that whoever runs it can look up. */
export type InSlices<T> = Generator<void, T, void>;

/** Runs it without a pause. */
export function inOneGo<T>(work: InSlices<T>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
