import type { Page } from "playwright";

/** Begins to measure how far things jump on the page: the sum of the browser's own layout-shift entries, input or not. */
export const watchShift = (page: Page) =>
  page.evaluate(() => {
    if (!PerformanceObserver.supportedEntryTypes.includes("layout-shift"))
      throw new Error("this browser does not measure jumps");
    const seen = { sum: 0 };
    const add = (list: PerformanceEntryList) => {
      for (const entry of list) seen.sum += (entry as PerformanceEntry & { value: number }).value;
    };
    const watch = new PerformanceObserver((list) => add(list.getEntries()));
    watch.observe({ type: "layout-shift" });
    Object.assign(window, {
      shiftSeen: () => {
        add(watch.takeRecords());
        return seen.sum;
      },
    });
  });

/** What was measured since, two frames after the last touch. */
export const shiftSeen = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<number>((resolve) =>
        requestAnimationFrame(() =>
          requestAnimationFrame(() =>
            setTimeout(() => resolve((window as unknown as { shiftSeen(): number }).shiftSeen()), 50),
          ),
        ),
      ),
  );
