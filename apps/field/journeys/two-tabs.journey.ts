import type { Page } from "playwright";
import { afterAll, beforeAll, expect, inject, it } from "vitest";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { bookInFile, bookOnDisk, changesInFile, exportedText, rawOf } from "./read-book.ts";
import { smallBook, takeIn } from "./small-book.ts";

let phone: Phone;
beforeAll(async () => {
  await openBrowser();
  phone = await pickUpPhone();
});
afterAll(async () => {
  await phone?.close();
  await closeBrowser();
});

const enter = async (page: Page, text: string) => {
  for (const sign of text) await page.locator(`.key[data-key="${sign}"]`).click();
  const { hash } = new URL(page.url());
  await page.locator(".thumb .next").click();
  await page.waitForFunction((was) => location.hash !== was, hash);
};

it("two tabs on one book see each other's readings, and no edit of either is lost", async () => {
  const one = phone.page;
  await takeIn(one, smallBook());
  await one.goto(`${new URL("#/unit/unit", one.url())}`);
  for (const name of [/^Start visit/, /^In use/, /^All as it should be/]) await phone.tap(name);
  await one.locator(".key").first().waitFor();
  const visit = new URL(one.url()).hash.split("/")[2]!;
  const two = await phone.context.newPage();
  await two.goto(`${inject("appUrl")}#/visit/${visit}/read/asFound/feedTds`);
  await two.locator(".key").first().waitFor();

  await Promise.all([enter(one, "22"), enter(two, "301")]);
  await one.goto(`${new URL(`#/visit/${visit}`, one.url())}`);
  await two.goto(`${new URL(`#/visit/${visit}`, two.url())}`);
  for (const page of [one, two])
    for (const [slot, text] of [
      ["deliveredTds", "22"],
      ["feedTds", "301"],
    ])
      await page.locator(`[data-step="read:asFound:${slot}"] [aria-label^="${text}"]`).waitFor();

  for (const page of [one, two])
    await page.goto(`${new URL(`#/visit/${visit}/read/asFound/tankFullPressure`, page.url())}`);
  await Promise.all([enter(one, "42"), enter(two, "44")]);
  for (const page of [one, two]) await page.goto(`${new URL(`#/visit/${visit}`, page.url())}`);
  await expect
    .poll(async () => {
      const shown = await Promise.all(
        [one, two].map((page) =>
          page
            .locator('[data-step="read:asFound:tankFullPressure"] [aria-label]')
            .first()
            .getAttribute("aria-label"),
        ),
      );
      return shown[0] === shown[1] && /^4[24]/.test(shown[0] ?? "");
    })
    .toBe(true);

  const text = await exportedText(one);
  const field = "reading:asFound:tankFullPressure";
  const written = changesInFile(text).filter((change) => rawOf(change, field));
  expect(written.map((change) => rawOf(change, field)).sort()).toEqual(["42", "44"]);
  expect(new Set(written.map((change) => change.device)).size, "each tab writes under an id of its own").toBe(
    2,
  );
  expect(bookInFile(text).visit.get(visit)?.readings).toEqual(
    (await bookOnDisk(two)).visit.get(visit)?.readings,
  );
  expect(phone.errors).toEqual([]);
});
