import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { seededRandom } from "@tapside/diagnosis";
import type { Page } from "playwright";
import { expect, inject, it } from "vitest";
import { type OwnBrowser, startBrowser } from "./own-browser.ts";
import { bookInFile, bookOnDisk, exportedText } from "./read-book.ts";
import { smallBook, takeIn } from "./small-book.ts";

const KILLS = 5;

const NUMBERS: Readonly<Record<string, string>> = {
  deliveredTds: "22",
  tankFullPressure: "42",
  waterMeter: "371.25",
  feedTds: "301",
  feedTemperature: "13.4",
  chlorineBefore: "0.95",
  chlorineAfter: "0.05",
  tankAfterPressure: "24",
  beforeFilterPressure: "61.5",
  afterFilterPressure: "51.6",
};

const slotHere = (page: Page) => new URL(page.url()).hash.split("/").at(-1)!;
const key = (page: Page, sign: string) => page.locator(`.key[data-key="${sign}"]`).click();

/** Types a number as a hand would and takes it; acknowledged is what a next screen has come for without a word about the disk. */
async function enter(page: Page, acknowledged: Map<string, string>) {
  const slot = slotHere(page);
  const text = NUMBERS[slot]!;
  for (const sign of text.slice(await draftLength(page))) await key(page, sign);
  await page.locator(".thumb .next").click();
  await page.waitForFunction((was) => !location.hash.endsWith(`/${was}`), slot);
  if ((await page.getByText("not kept yet").count()) === 0) acknowledged.set(slot, text);
}

/** How much of the number stands on the screen. */
async function draftLength(page: Page): Promise<number> {
  const numeral = page.locator(".huge [aria-label]");
  const name = (await numeral.count()) > 0 ? await numeral.first().getAttribute("aria-label") : "";
  return /^[\d.]*/.exec(name ?? "")![0].length;
}

async function raws(page: Page): Promise<Readonly<Record<string, string>>> {
  const [visit] = [...(await bookOnDisk(page)).visit.values()];
  return Object.fromEntries(
    Object.entries(visit?.readings.asFound ?? {}).map(([slot, reading]) => [slot, reading.raw]),
  );
}

it(`nothing acknowledged is missing after the browser was killed ${KILLS} times during entry, and it goes on where it was`, async () => {
  const profile = mkdtempSync(join(tmpdir(), "tapside-killed-"));
  const random = seededRandom(Number(process.env.TAPSIDE_SEED ?? 20261125));
  const acknowledged = new Map<string, string>();
  let own: OwnBrowser = await startBrowser(profile);
  try {
    await own.page.goto(inject("appUrl"));
    await own.page.getByRole("heading", { level: 1 }).waitFor();
    await takeIn(own.page, smallBook());
    await own.page.goto(`${new URL("#/unit/unit", own.page.url())}`);
    for (const name of [/^Start visit/, /^In use/, /^All as it should be/])
      await own.page.getByRole("button", { name }).first().click();
    await own.page.locator('.key[data-key="1"]').waitFor();
    for (let round = 0; round < KILLS; round++) {
      const pause = round % 2 === 1;
      const before = slotHere(own.page);
      const killed = pause
        ? undefined
        : new Promise((done) => setTimeout(done, 100 + random() * 1500)).then(own.kill);
      const entering = (async () => {
        for (let n = 0; n < (pause ? 1 : 3) && NUMBERS[slotHere(own.page)]; n++)
          await enter(own.page, acknowledged);
      })().catch((error) => {
        if (pause) throw error;
      });
      await Promise.all([killed, entering]);
      let halfTyped: readonly [slot: string, text: string] | undefined;
      if (pause) {
        const slot = slotHere(own.page);
        const text = NUMBERS[slot]!.slice(0, 1 + Math.floor(random() * (NUMBERS[slot]!.length - 1)));
        for (const sign of text) await key(own.page, sign);
        await own.page.waitForTimeout(700);
        expect(await own.page.getByText("not kept yet").count()).toBe(0);
        halfTyped = [slot, text];
        await own.kill();
      }
      own = await startBrowser(profile);
      await own.page.goto(inject("appUrl"));
      await own.page.waitForFunction(() => /\/read\//.test(location.hash));
      await own.page.locator(".key").first().waitFor();
      expect(await raws(own.page), `kill ${round + 1}, from ${before}`).toMatchObject(
        Object.fromEntries(acknowledged),
      );
      const here = slotHere(own.page);
      if (halfTyped) {
        expect(here).toBe(halfTyped[0]);
        await own.page.locator(`.huge [aria-label^="${halfTyped[1]}"]`).waitFor();
      }
      const order = Object.keys(NUMBERS);
      if (here in NUMBERS) expect(order.indexOf(here)).toBeGreaterThanOrEqual(acknowledged.size - 1);
    }
    while (NUMBERS[slotHere(own.page)]) await enter(own.page, acknowledged);
    expect(await raws(own.page)).toMatchObject(NUMBERS);
    const [visit] = [...bookInFile(await exportedText(own.page)).visit.values()];
    for (const [slot, raw] of acknowledged)
      expect(visit!.readings.asFound[slot as "feedTds"]?.raw, slot).toBe(raw);
  } finally {
    await own.kill();
    rmSync(profile, { recursive: true, force: true });
  }
}, 180_000);
