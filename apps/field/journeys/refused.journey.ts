import { afterAll, beforeAll, expect, it } from "vitest";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { bookInFile, bookOnDisk, exportedText } from "./read-book.ts";
import { smallBook, takeIn } from "./small-book.ts";

beforeAll(async () => {
  await openBrowser();
});
afterAll(closeBrowser);

async function toFirstNumber(phone: Phone) {
  await takeIn(phone.page, smallBook());
  await phone.page.goto(`${new URL("#/unit/unit", phone.page.url())}`);
  for (const name of [/^Start visit/, /^In use/, /^All as it should be/]) await phone.tap(name);
  await phone.page.locator(".key").first().waitFor();
}

const rawsIn = (book: Awaited<ReturnType<typeof bookOnDisk>>) =>
  [...book.visit.values()].map((visit) => visit.readings.asFound.deliveredTds?.raw);

it("a phone that refuses storage says so on every screen, works on in memory, and exports", async () => {
  const phone = await pickUpPhone({
    before: (context) =>
      context.addInitScript(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException("storage is switched off", "SecurityError");
        };
      }),
  });
  await phone.page.getByText(/^This phone refuses to keep the book/).waitFor();
  await phone.checkAccess("storage refused");
  await toFirstNumber(phone);
  await phone.page.getByText(/^This phone refuses to keep the book/).waitFor();
  await phone.checkAccess("entry, storage refused");
  await phone.number("22");
  await phone.page.getByRole("heading", { level: 1, name: /^Tank/ }).waitFor();
  expect(rawsIn(bookInFile(await exportedText(phone.page)))).toEqual(["22"]);
  expect(phone.errors).toEqual([]);
  await phone.close();
});

it("a disk that fills up in the visit is said in a sentence; trying again keeps what it refused", async () => {
  const phone = await pickUpPhone();
  const { page } = phone;
  await toFirstNumber(phone);
  await page.evaluate(() => {
    const { add } = IDBObjectStore.prototype;
    const full = window as unknown as { makeRoom: () => void };
    full.makeRoom = () => {
      IDBObjectStore.prototype.add = add;
    };
    IDBObjectStore.prototype.add = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await phone.number("22");
  await page.getByRole("heading", { level: 1, name: /^Tank/ }).waitFor();
  await page.getByText(/^This phone refuses to keep the book/).waitFor();
  expect(rawsIn(await bookOnDisk(page))).toEqual([undefined]);
  await page.evaluate(() => (window as unknown as { makeRoom: () => void }).makeRoom());
  await phone.tap(/^This phone refuses to keep the book/);
  await page.getByText(/^This phone refuses to keep the book/).waitFor({ state: "detached" });
  expect(rawsIn(await bookOnDisk(page))).toEqual(["22"]);
  expect(phone.errors).toEqual([]);
  await phone.close();
});
