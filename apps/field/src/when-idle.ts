/** Runs the job once the page has nothing to do, where the browser tells, and otherwise after a while. Returns what calls it off. */
export function whenIdle(job: () => void): () => void {
  if (typeof requestIdleCallback === "function") {
    const id = requestIdleCallback(job);
    return () => cancelIdleCallback(id);
  }
  const id = setTimeout(job, 1500);
  return () => clearTimeout(id);
}
