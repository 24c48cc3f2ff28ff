import type { Page } from "playwright";

/** Ends of what is expected in a port's band. */
export async function expectedBand(page: Page, port: string): Promise<readonly [low: number, high: number]> {
  const name = await page
    .locator(".port", { hasText: port })
    .locator("svg[aria-label^=expected]")
    .getAttribute("aria-label");
  const ends = /([\d.]+)–([\d.]+)/.exec(name ?? "");
  if (!ends) throw new Error(`nothing expected at ${port}: ${name}`);
  return [Number(ends[1]), Number(ends[2])];
}

/** Middle of what is expected in a port's band. */
export const expectedMiddle = async (page: Page, port: string): Promise<number> =>
  (await expectedBand(page, port)).reduce((a, b) => a + b) / 2;
