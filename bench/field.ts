/**
 * The phone app in a real browser at 6× page throttle: start, echo of a key, judgement; the PDF in its worker, which the throttle does
 * not slow, un-throttled; JavaScript needed before the first use. Beside a calibration loop in the same page. Prints JSON with the goals.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { chromium, type Page } from "playwright";
import { smallBook, takeIn } from "../apps/field/journeys/small-book.ts";
import { ensureApp, root } from "../tools/ensure-ready.mjs";
import { findBrowser } from "../tools/find-browser.mjs";
import { serve } from "../tools/serve.mjs";
import { bareStarts } from "./support/bare-start.ts";

const DIST = join(root, "apps/field/dist");
const THROTTLE = 6;

ensureApp();
const { port, close } = await serve({ port: 4790 });
const url = `http://localhost:${port}/`;
const { executablePath, args, env } = await findBrowser();
const browser = await chromium.launch({ executablePath, args, env: env as Record<string, string> });

/** The scripts the page asks for before it can be used: what it names, the words of one language, and what those import, not what waits behind `import()`. */
function scriptsBeforeUse(): string[] {
  const page = readFileSync(join(DIST, "index.html"), "utf8");
  const named = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map((match) => match[1]!);
  return withImports([...new Set([...named, ...allScripts.filter((name) => /\/first\.en-/.test(name))])]);
}

/** What a unit's judgement and a visit need besides: fetched while the first screen is looked at. */
const scriptsOfVisit = () =>
  withImports([
    ...scriptsBeforeUse(),
    ...allScripts.filter((name) => /\/(?:unit-routes|visit-routes|visit\.en)-/.test(name)),
  ]);

function withImports(wanted: string[]): string[] {
  for (let i = 0; i < wanted.length; i++) {
    const text = readFileSync(join(DIST, wanted[i]!), "utf8");
    for (const [, name] of text.matchAll(/\b(?:from|import)\s*"\.\/([^"]+\.js)"/g))
      if (!wanted.includes(`assets/${name}`)) wanted.push(`assets/${name}`);
  }
  return wanted;
}

const gzBytes = (files: readonly string[]) =>
  files.reduce((sum, file) => sum + gzipSync(readFileSync(join(DIST, file)), { level: 9 }).length, 0);

const allScripts = readdirSync(join(DIST, "assets"))
  .filter((name) => name.endsWith(".js"))
  .map((name) => `assets/${name}`);

const sorted = (times: readonly number[]) => [...times].sort((a, b) => a - b);
const quantile = (times: readonly number[], share: number) =>
  sorted(times)[Math.min(times.length - 1, Math.floor(share * times.length))]!;

const phone = () =>
  browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    acceptDownloads: true,
  });

async function throttle(page: Page, rate: number) {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}

/** A million square roots and exponentials in the page. */
const calibration = (page: Page) =>
  page.evaluate(() => {
    const start = performance.now();
    let sum = 0;
    for (let k = 1; k <= 1_000_000; k++) sum += Math.exp(-Math.sqrt(k * 1e-6));
    return sum > 0 ? performance.now() - start : 0;
  });

interface Answered {
  /** From a press to the frame that draws its answer. */
  readonly frameMs: number;
  /** Until that frame is painted: a message posted in it is answered after it. */
  readonly paintedMs: number;
}

const pressed = (page: Page, selector: string, until: string): Promise<Answered> =>
  page.evaluate(
    ([pressed, shown]) =>
      new Promise<Answered>((done, fail) => {
        const start = performance.now();
        const look = () =>
          requestAnimationFrame(() => {
            if (document.querySelector(shown!)) {
              const painted = new MessageChannel();
              const frameMs = performance.now() - start;
              painted.port1.onmessage = () => done({ frameMs, paintedMs: performance.now() - start });
              painted.port2.postMessage(undefined);
            } else if (performance.now() - start > 60_000)
              fail(new Error(`${shown} never came at ${location.hash}`));
            else look();
          });
        document.querySelector<HTMLElement>(pressed!)!.click();
        look();
      }),
    [selector, until],
  );

const pressedMs = async (page: Page, selector: string, until: string): Promise<number> =>
  (await pressed(page, selector, until)).frameMs;

const context = await phone();
const first = await context.newPage();
first.setDefaultTimeout(60_000);
await first.goto(url);
await first.evaluate(() => navigator.serviceWorker.ready.then(() => true));
const kept = await bareStarts(browser, url);
await kept.start(1, "keepOffline");
const starts: number[] = [];
for (let i = 0; i < 7; i++) starts.push(await kept.start(THROTTLE, "close"));
const fresh: number[] = [];
for (let i = 0; i < 3; i++) fresh.push(await (await bareStarts(browser, url)).start(THROTTLE, "close"));

await takeIn(first, smallBook());
await first.goto(`${url}#/unit/unit`);
for (const name of [/^Start visit/, /^In use/, /^All as it should be/])
  await first.getByRole("button", { name }).or(first.getByRole("link", { name })).first().click();
await first.locator(".key").first().waitFor();
const type = async (text: string) => {
  for (const sign of text) await first.locator(`.key[data-key="${sign}"]`).click();
  const { hash } = new URL(first.url());
  await first.locator(".thumb .next").click();
  await first.waitForFunction((was) => location.hash !== was, hash);
};
for (const text of ["22", "42", "371", "301", "13", "0.9", "0.1", "24", "61", "51.6"]) await type(text);
const visit = new URL(first.url()).hash.split("/")[2]!;
for (const [slot, label] of [
  ["permeateFlow", "s"],
  ["drainFlow", "s"],
] as const) {
  void label;
  await first.goto(`${url}#/visit/${visit}/read/asFound/${slot}`);
  await first.getByRole("button", { name: /^Start/ }).click();
  await first.waitForTimeout(1200);
  await first.locator(".stopwatch-face").click();
  await first.locator(".thumb .next").click();
}
await first.goto(`${url}#/visit/${visit}/read/asFound/permeateTds`);
await first.locator(".key").first().waitFor();
const calibrationMs = await calibration(first);
await throttle(first, THROTTLE);
const throttledCalibrationMs = await calibration(first);
const echoes: number[] = [];
for (let i = 0; i < 60; i++) {
  const rub = i % 4 === 3;
  echoes.push(await pressedMs(first, `.key[data-key="${rub ? "rubOut" : 1 + (i % 3)}"]`, ".huge"));
}
const judgements: number[] = [];
for (const sign of ["5", "6", "7", "8", "9"]) {
  await first.goto(`${url}#/visit/${visit}/read/asFound/permeateTds`);
  await first.locator(".key").first().waitFor();
  for (const key of [...Array(7).fill("rubOut"), "1", sign])
    await pressedMs(first, `.key[data-key="${key}"]`, ".huge");
  await first.waitForTimeout(300);
  judgements.push(await pressedMs(first, ".thumb .next", ".finding, .limit-head"));
}
/** "What should it read today": the last digit of the temperature and the press that shows every port's interval, at once or after a thumb's way to the key. */
const today = { atOnce: [] as Answered[], afterThumb: [] as Answered[] };
const THUMB_MS = 400;
for (const [last, when] of (["atOnce", "afterThumb"] as const).flatMap((one) =>
  // Other temperatures: an answer once worked out is remembered.
  (one === "atOnce" ? ["2", "3", "4", "5", "6"] : ["0", "1", "7", "8", "9"]).map(
    (digit) => [digit, one] as const,
  ),
)) {
  await first.goto(`${url}#/`);
  await first.goto(`${url}#/unit/unit/expected`);
  const temperature = first.locator(".given").nth(1);
  for (const [given, digits] of [
    [first.locator(".given").nth(0), "58"],
    [temperature, "1"],
  ] as const) {
    if ((await given.getAttribute("aria-pressed")) !== "true") await given.click();
    for (const key of [...Array(4).fill("rubOut"), ...digits])
      await pressedMs(first, `.key[data-key="${key}"]`, ".given");
  }
  await first.waitForTimeout(300);
  const typed = await pressed(first, `.key[data-key="${last}"]`, ".given");
  if (when === "afterThumb") await first.waitForTimeout(THUMB_MS);
  const shown = await pressed(first, ".thumb .next", 'div:not([hidden]) > .port[data-mark="expected"]');
  today[when].push({
    frameMs: typed.frameMs + shown.frameMs,
    paintedMs: typed.paintedMs + shown.paintedMs,
  });
}
await throttle(first, 1);
await first.goto(`${url}#/visit/${visit}/record`);
await first.locator(".thumb .next").waitFor();
const download = first.waitForEvent("download");
const issueMs = await pressedMs(first, ".thumb .next", "a[href^='#/unit/'].next");
const pdf = readFileSync(await (await download).path());
const pages = pdf.toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0;
await browser.close();
close();

const kB = (bytes: number) => Math.round(bytes / 100) / 10;
const ms = (value: number) => Math.round(value);
const middleOf = (all: readonly Answered[], what: keyof Answered) =>
  ms(
    quantile(
      all.map((one) => one[what]),
      0.5,
    ),
  );
console.log(
  JSON.stringify(
    {
      bench: "field",
      calibrationMs: ms(calibrationMs),
      throttledCalibrationMs: ms(throttledCalibrationMs),
      scriptsBeforeUseKBGz: kB(gzBytes(scriptsBeforeUse())),
      goalScriptsBeforeUseKBGz: 200,
      scriptsOfVisitKBGz: kB(gzBytes(scriptsOfVisit())),
      allScriptsKBGz: kB(gzBytes(allScripts)),
      startAt6xMs: ms(quantile(starts, 0.5)),
      firstStartEverAt6xMs: ms(quantile(fresh, 0.5)),
      goalStartAt6xMs: 1500,
      keyEchoP50At6xMs: ms(quantile(echoes, 0.5)),
      keyEchoP95At6xMs: ms(quantile(echoes, 0.95)),
      goalKeyEchoP95At6xMs: 50,
      judgementAt6xMs: ms(quantile(judgements, 0.5)),
      goalJudgementAt6xMs: 200,
      whatItShouldReadTodayAt6xMs: middleOf(today.atOnce, "frameMs"),
      whatItShouldReadTodayAfterAThumbsWayAt6xMs: middleOf(today.afterThumb, "frameMs"),
      /** With the painting of both frames, of the key and of the answer. */
      whatItShouldReadTodayPaintedAt6xMs: middleOf(today.atOnce, "paintedMs"),
      goalWhatItShouldReadTodayAt6xMs: 100,
      recordIssuedAndPrintedMs: ms(issueMs),
      pagesPrinted: pages,
      goalPrintedMs: 2000,
    },
    null,
    2,
  ),
);
