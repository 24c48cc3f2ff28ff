import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { root } from "../../../tools/ensure-ready.mjs";
import { serve } from "../../../tools/serve.mjs";
import { closeBrowser, openBrowser, pickUpPhone } from "./phone.ts";
import { bookOnDisk } from "./read-book.ts";
import { smallBook, takeIn } from "./small-book.ts";

let folder: string;
let server: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "tapside-served-"));
  cpSync(join(root, "apps/field/dist"), folder, { recursive: true });
  server = await serve({ port: 4780, folder });
  await openBrowser();
});
afterAll(async () => {
  await closeBrowser();
  server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** A second build: another page, and a service worker that knows it. */
function buildSecond() {
  const page = join(folder, "index.html");
  writeFileSync(
    page,
    readFileSync(page, "utf8").replace("<head>", '<head><meta name="build" content="second">'),
  );
  const worker = join(folder, "sw.js");
  const first = readFileSync(worker, "utf8");
  const second = first.replace(
    /(\{url:"index\.html",revision:")[0-9a-f]+|(\{"revision":")[0-9a-f]+(?=","url":"index\.html")/,
    (_, a, b) => `${a ?? b}5ec0d`,
  );
  expect(second).not.toBe(first);
  writeFileSync(worker, second);
}

it("an update that comes while a visit is open waits, does not disturb it, and is offered after", async () => {
  const phone = await pickUpPhone({ url: `http://localhost:${server.port}/` });
  const { page } = phone;
  await takeIn(page, smallBook());
  await page.goto(`${new URL("#/unit/unit", page.url())}`);
  for (const name of [/^Start visit/, /^In use/, /^All as it should be/]) await phone.tap(name);
  await page.locator('.key[data-key="2"]').click();
  await page.evaluate(() => {
    (window as unknown as { sameLife: boolean }).sameLife = true;
  });
  buildSecond();
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await page.getByText("A new version is ready. It waits until the visit is closed.").waitFor();
  await phone.checkAccess("update waits");
  await phone.number("2");
  await page.locator('.key[data-key="4"]').waitFor();
  expect(await page.evaluate(() => (window as unknown as { sameLife?: boolean }).sameLife)).toBe(true);
  expect([...(await bookOnDisk(page)).visit.values()][0]?.readings.asFound.deliveredTds?.raw).toBe("22");

  await page.goto(page.url().replace(/#.*/, "#/more"));
  expect(
    await page.getByRole("button", { name: /^A new version is ready/ }).count(),
    "not offered before",
  ).toBe(0);
  await page.goBack();
  await page.goto(page.url().replace(/\/read\/.*/, "/record"));
  await phone.tap(/^Issue record/);
  await page.getByText("The PDF is on this phone.").waitFor({ timeout: 30_000 });
  await page.goto(page.url().replace(/#.*/, "#/"));
  await page.getByRole("button", { name: /^A new version is ready/ }).click();
  await page.waitForFunction(() => document.querySelector('meta[name="build"]') !== null);
  await page.getByText("Reed Bank infants").first().waitFor();
  expect([...(await bookOnDisk(page)).visit.values()][0]?.closed).toBe(true);
  expect(phone.errors).toEqual([]);
  await phone.close();
}, 90_000);
