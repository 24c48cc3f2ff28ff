import type { Page } from "playwright";
import { expect } from "vitest";

/** Words of a program that slipped onto the screen; what a person typed themselves may stand there in quotes. */
const SLIPPED = /\b(?:NaN|undefined|null|Infinity)\b|\[object /;

export async function expectCleanScreen(page: Page, where: string, typed = "") {
  // biome-ignore lint/performance/useDomNodeTextContent: words of neighbours must not run together
  const text = await page.locator("body").innerText();
  expect(typed === "" ? text : text.replaceAll(`"${typed}"`, ""), where).not.toMatch(SLIPPED);
}

/** Where the visit stands: what follows its id in the address. */
export const placeHere = (page: Page): string => new URL(page.url()).hash.split("/").slice(3).join("/");

/** From the unit of the small book to the first number of an annual visit. */
export async function toFirstNumber(page: Page) {
  await page.goto(`${new URL("#/unit/unit", page.url())}`);
  for (const name of [/^Start visit/, /^In use/, /^All as it should be/])
    await page.getByRole("button", { name }).or(page.getByRole("link", { name })).first().click();
  await page.locator('.key[data-key="1"]').waitFor();
}
