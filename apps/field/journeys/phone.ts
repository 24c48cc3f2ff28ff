import { AxeBuilder } from "@axe-core/playwright";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright";
import { expect, inject } from "vitest";
import { findBrowser } from "../../../tools/find-browser.mjs";

/** A phone in the hand: a page of phone size with the app open, its network cut on demand. */
export interface Phone {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What went wrong on the page so far. */
  readonly errors: string[];
  readonly count: { numbers: number; taps: number };
  offline(): Promise<void>;
  tap(name: string | RegExp): Promise<void>;
  /** Types a number on the app's own keypad and takes it: one number. */
  number(text: string): Promise<void>;
  /** Fails when axe finds anything, the strictest contrast included. */
  checkAccess(where: string): Promise<void>;
  close(): Promise<void>;
}

let browser: Browser | undefined;

export async function openBrowser(): Promise<Browser> {
  const { executablePath, args, env } = await findBrowser();
  browser ??= await chromium.launch({ executablePath, args, env: env as Record<string, string> });
  return browser;
}

export async function closeBrowser() {
  await browser?.close();
  browser = undefined;
}

interface PhoneOptions {
  readonly dark?: boolean;
  readonly width?: number;
  readonly height?: number;
  /** Another place the app is served at. */
  readonly url?: string;
  /** Another browser than the shared one. */
  readonly browser?: Browser;
  /** Done to the phone before the app is opened. */
  readonly before?: (context: BrowserContext) => Promise<unknown>;
}

export async function pickUpPhone(options: PhoneOptions = {}): Promise<Phone> {
  const context = await (options.browser ?? (await openBrowser())).newContext({
    viewport: { width: options.width ?? 390, height: options.height ?? 844 },
    deviceScaleFactor: 2,
    hasTouch: true,
    isMobile: true,
    locale: "en-GB",
    colorScheme: options.dark ? "dark" : "light",
    acceptDownloads: true,
  });
  await options.before?.(context);
  const page = await context.newPage();
  page.setDefaultTimeout(8000);
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  await page.goto(options.url ?? inject("appUrl"));
  await page.getByRole("heading", { level: 1 }).waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  return phoneOf(page, context, errors);
}

function phoneOf(page: Page, context: BrowserContext, errors: string[]): Phone {
  const count = { numbers: 0, taps: 0 };
  const press = (name: string | RegExp) =>
    page
      .locator("button, a")
      .filter({ visible: true })
      .and(page.getByRole("button", { name }).or(page.getByRole("link", { name })))
      .first();
  return {
    page,
    context,
    errors,
    count,
    offline: () => context.setOffline(true),
    tap: async (name) => {
      await press(name).click();
      await kept(page);
      count.taps++;
    },
    number: async (text) => {
      for (const sign of text) await page.locator(`.key[data-key="${sign}"]`).click();
      await page.locator(".thumb .next").click();
      await kept(page);
      count.numbers++;
    },
    checkAccess: async (where) => {
      // With one frame, gathering the answers in a page of its own finds the same and takes half as long again: the plain mode does without.
      expect(page.frames().length, `${where}: frames`).toBe(1);
      const { violations } = await new AxeBuilder({ page })
        .setLegacyMode()
        .options({ rules: { "color-contrast-enhanced": { enabled: true } } })
        .analyze();
      expect(
        violations.map((one) => `${where}: ${one.id}: ${one.nodes.map((node) => node.html).join(" ")}`),
      ).toEqual([]);
      expect(await smallTargets(page), `${where}: targets under 48 px`).toEqual([]);
    },
    close: () => context.close(),
  };
}

/** The next screen comes when what was written is on the disk. */
const kept = (page: Page) =>
  page.waitForFunction(() => !document.documentElement.classList.contains("keeping"));

/** Pressable things smaller than 48 px in either direction. */
const smallTargets = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("button, a, input:not(.unseen), select")]
      .filter((one) => one.offsetParent !== null)
      .map((one) => ({ name: one.textContent?.slice(0, 30) || one.id, box: one.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 1 && (box.width < 47.5 || box.height < 47.5))
      .map(({ name, box }) => `${name} ${box.width.toFixed(0)}×${box.height.toFixed(0)}`),
  );
