import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright";
import { afterAll, describe, expect, inject, it } from "vitest";
import { closeBrowser, type Phone, pickUpPhone } from "../journeys/phone.ts";
import { screenFaults } from "../journeys/screen-faults.ts";
import { sheets } from "./contact-sheets.ts";
import { openVisits } from "./open-visits.ts";
import { PLACES, type Place } from "./places.ts";

const FOLDER = fileURLToPath(new URL("../../../tmp/shots/", import.meta.url));
const DEMO = readFileSync("examples/larkmoor.tapside.json", "utf8");

interface Look {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly dark?: boolean;
  /** Text of twice the size, as set in the phone. */
  readonly large?: boolean;
  readonly language?: "es";
}

const SMALL = { width: 360, height: 740 };
const USUAL = { width: 390, height: 844 };
const TALL = { width: 430, height: 932 };

const LOOKS: readonly Look[] = [
  { name: "360", ...SMALL },
  { name: "360-dark", ...SMALL, dark: true },
  { name: "390", ...USUAL },
  { name: "390-dark", ...USUAL, dark: true },
  { name: "430", ...TALL },
  { name: "430-dark", ...TALL, dark: true },
  { name: "360-large", ...SMALL, large: true },
  { name: "360-large-dark", ...SMALL, large: true, dark: true },
  { name: "430-large", ...TALL, large: true },
  { name: "430-large-dark", ...TALL, large: true, dark: true },
  { name: "360-es", ...SMALL, language: "es" },
];

/** `TAPSIDE_LOOKS=360,360-es` and `TAPSIDE_PLACES=visit-read,unit` take a part. */
const partOf = (variable: string | undefined) => variable?.split(",").filter((one) => one !== "");
const looks = LOOKS.filter(({ name }) => partOf(process.env.TAPSIDE_LOOKS)?.includes(name) ?? true);
const places = Object.values(PLACES)
  .flat()
  .filter(({ name }) => partOf(process.env.TAPSIDE_PLACES)?.some((start) => name.startsWith(start)) ?? true);

describe("every screen", () => {
  afterAll(closeBrowser);

  it.each(looks)(
    "$name: pictured, and nothing cut, too small or over another thing",
    async (look) => {
      const folder = `${FOLDER}${look.name}/`;
      mkdirSync(folder, { recursive: true });
      const phone = await pickUpPhone({
        width: look.width,
        height: look.height,
        dark: look.dark ?? false,
        before: async (context) => {
          if (look.language)
            await context.addInitScript(
              (language) => localStorage.setItem("language", language),
              look.language,
            );
        },
      });
      const faults: string[] = [];
      try {
        if (look.large) await largeText(phone);
        for (const place of [...places].sort((a, b) => Number(b.own ?? false) - Number(a.own ?? false))) {
          if (!place.own) await inDemo(phone.page);
          const found = await pictureOf(phone, place, `${folder}${place.name}.png`, look).catch((error) => [
            `not seen: ${String(error).split("\n")[0]}`,
          ]);
          faults.push(...found.map((fault) => `${place.name}: ${fault}`));
        }
        faults.push(...phone.errors.map((error) => `error: ${error}`));
      } finally {
        writeFileSync(`${folder}faults.txt`, `${faults.join("\n")}\n`);
        await sheets(
          phone.context,
          folder,
          places.map(({ name }) => name),
        );
        await phone.close();
      }
      console.log(`${look.name}: ${places.length} pictures, ${faults.length} faults\n${faults.join("\n")}`);
      expect(faults.length, `faults, listed in ${folder}faults.txt`).toBe(0);
    },
    900_000,
  );
});

async function largeText(phone: Phone) {
  const session = await phone.context.newCDPSession(phone.page);
  await session.send("Page.setFontSizes", { fontSizes: { standard: 32, fixed: 26 } });
}

/** Opens the demo book with the visits of `open-visits.ts`, once. */
async function inDemo(page: Page) {
  if (await page.evaluate(() => sessionStorage.getItem("book") === "tapside-demo")) return;
  await page.evaluate(() => sessionStorage.setItem("book", "tapside-demo"));
  await page.goto(inject("appUrl"));
  await page.reload();
  await page.locator("main a").nth(8).waitFor({ timeout: 20_000 });
  await goTo(page, "/more");
  await page
    .locator("input[type=file]")
    .last()
    .setInputFiles({
      name: "open-visits.json",
      mimeType: "application/json",
      buffer: Buffer.from(openVisits(DEMO, Date.now())),
    });
  await page.locator("main [role=status]", { hasText: /\d/ }).waitFor();
}

const goTo = (page: Page, to: string) => page.goto(`${inject("appUrl")}#${to}`);

async function pictureOf(phone: Phone, place: Place, path: string, look: Look): Promise<string[]> {
  const { page } = phone;
  await goTo(page, place.to);
  await page.getByRole("heading", { level: 1 }).first().waitFor();
  if (place.ready) await page.locator(place.ready).first().waitFor({ timeout: 30_000 });
  await place.before?.(page);
  await still(page);
  await page.evaluate(() => scrollTo(0, 0));
  const faults = [...(await screenFaults(page)), ...(await accessFaults(phone, place))];
  const tall = await page.evaluate(() => document.documentElement.scrollHeight);
  if (tall > look.height) await page.setViewportSize({ width: look.width, height: Math.min(tall, 2600) });
  await page.screenshot({ path, scale: "css" });
  await page.setViewportSize({ width: look.width, height: look.height });
  return faults;
}

/** What axe finds, where `TAPSIDE_AXE` asks for it. */
const accessFaults = async (phone: Phone, { name }: Place): Promise<string[]> =>
  process.env.TAPSIDE_AXE === undefined
    ? []
    : phone.checkAccess(name).then(
        () => [],
        (error) => [`access: ${String(error).replace(/\s+/g, " ").slice(0, 400)}`],
      );

/** Waits until nothing on the page changed for a while. */
const still = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const done = () => {
          watch.disconnect();
          resolve();
        };
        let quiet = setTimeout(done, 250);
        const watch = new MutationObserver(() => {
          clearTimeout(quiet);
          quiet = setTimeout(done, 250);
        });
        watch.observe(document.body, { childList: true, subtree: true, attributes: true });
        setTimeout(done, 3000);
      }),
  );
