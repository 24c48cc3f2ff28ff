/** Runs work that stops now and then, without resting. */
export function runThrough<T>(work: Generator<void, T>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
