import type { Page } from "playwright";

/** Begins to measure how far things jump on the page: the sum of the browser's own layout-shift entries, input or not. */
export const watchShift = (page: Page) =>
  page.evaluate(() => {
    if (!PerformanceObserver.supportedEntryTypes.includes("layout-shift"))
      throw new Error("this browser does not measure jumps");
    const seen = { sum: 0, moved: [] as string[] };
    type Shift = PerformanceEntry & { value: number; sources: { node: Node | null }[] };
    const add = (list: PerformanceEntryList) => {
      for (const entry of list as Shift[]) {
        seen.sum += entry.value;
        for (const { node } of entry.sources)
          seen.moved.push(node?.parentElement?.className || String(node?.nodeName));
      }
    };
    const watch = new PerformanceObserver((list) => add(list.getEntries()));
    watch.observe({ type: "layout-shift" });
    Object.assign(window, {
      shiftSeen: () => {
        add(watch.takeRecords());
        return seen;
      },
    });
  });

/** What was measured since, two frames after the last touch. */
export const shiftSeen = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ sum: number; moved: string[] }>((resolve) =>
        requestAnimationFrame(() =>
          requestAnimationFrame(() =>
            setTimeout(
              () =>
                resolve((window as unknown as { shiftSeen(): { sum: number; moved: string[] } }).shiftSeen()),
              50,
            ),
          ),
        ),
      ),
  );
