/**
 * Due list and search of 500 sites with 10,000 visits on a phone six times slower than this machine, beside a calibration loop
 * of the same run. Workers are not slowed by the throttle. Prints JSON.
 */
import { type Change, exportFile, NO_STAMP, nextStamp, SCHEMA } from "@tapside/records";
import { chromium } from "playwright";
import { ensureApp } from "../tools/ensure-ready.mjs";
import { findBrowser } from "../tools/find-browser.mjs";
import { serve } from "../tools/serve.mjs";

const SITES = 500;
const VISITS_PER_SITE = 20;
const THROTTLE = 6;

/** A book of invented kitchens, each with one unit, four parts and twenty yearly visits. */
function bigBook(): string {
  const changes: Change[] = [];
  let at = NO_STAMP as string;
  const put = (kind: string, record: string, fields: Change["fields"]) => {
    at = nextStamp(at, 1_700_000_000_000);
    changes.push({ id: `c${changes.length}`, record, kind, fields, at, device: "bench", schema: SCHEMA });
  };
  const reading = (value: number, unit: string, port: string, day: string) => ({
    raw: String(value),
    value,
    unit,
    port,
    at: `${day}T07:00:00Z`,
  });
  for (let i = 0; i < SITES; i++) {
    put("site", `s${i}`, { name: `Kitchen ${i}`, code: `K-${i}`, chain: `District ${i % 9}` });
    put("point", `p${i}`, { site: `s${i}`, name: "Kitchen" });
    put("unit", `u${i}`, { point: `p${i}`, name: "Unit 1", serial: `N-${7000 + i}`, tankL: 53 });
    for (const role of ["sediment", "carbon", "element", "postCarbon"])
      put("part", `${role}${i}`, {
        unit: `u${i}`,
        role,
        fittedOn: `2025-${String(1 + (i % 12)).padStart(2, "0")}-10`,
        ratedLitres: 57000,
        lot: `L-${i % 40}`,
      });
    for (let k = 0; k < VISITS_PER_SITE; k++) {
      const day = `${2006 + k}-${String(1 + (i % 12)).padStart(2, "0")}-10`;
      put("visit", `v${i}-${k}`, {
        unit: `u${i}`,
        point: `p${i}`,
        kind: "annual",
        startedAt: `${day}T07:00:00Z`,
        endedAt: `${day}T08:00:00Z`,
        closed: true,
        "reading:asFound:feedTds": reading(300 + (i % 50), "ppm", "feed", day),
        "reading:asFound:deliveredTds": reading(15 + (i % 9), "ppm", "delivered", day),
        "reading:asFound:chlorineBefore": reading(0.8, "mg/L", "beforeFilter", day),
        "reading:asFound:waterMeter": reading(40 * k + (i % 30), "m³", "meter", day),
      });
    }
  }
  return exportFile({ changes, photos: [] });
}

/** A million square roots and exponentials: what this machine can do. */
function calibration(): number {
  const start = performance.now();
  let sum = 0;
  for (let k = 1; k <= 1_000_000; k++) sum += Math.exp(-Math.sqrt(k * 1e-6));
  return sum > 0 ? performance.now() - start : 0;
}

const median = (times: readonly number[]) => [...times].sort((a, b) => a - b)[times.length >> 1]!;

ensureApp();
const server = await serve({ port: 4790 });
const browser = await chromium.launch((await findBrowser()) as Parameters<typeof chromium.launch>[0]);
const page = await (await browser.newContext({ viewport: { width: 390, height: 844 } })).newPage();
page.setDefaultTimeout(120_000);
const url = `http://localhost:${server.port}/`;
await page.goto(`${url}#/more`);
await page.getByRole("heading", { level: 1 }).waitFor();
await page.locator("input[type=file]").setInputFiles({
  name: "big.json",
  mimeType: "application/json",
  buffer: Buffer.from(bigBook()),
});
await page.getByText(/taken in/).waitFor();

const slow = await page.context().newCDPSession(page);
await slow.send("Emulation.setCPUThrottlingRate", { rate: THROTTLE });

const GIVE_UP_MS = 60_000;

/** From the tap until the screen has been drawn, by the page's own clock. */
async function until(act: string, there: string): Promise<number> {
  return page.evaluate(
    async ([doIt, wanted, most]) => {
      const start = performance.now();
      new Function(doIt as string)();
      const is = new Function(`return ${wanted}`) as () => boolean;
      while (!is()) {
        if (performance.now() - start > (most as number))
          throw new Error(
            `not there: ${wanted}, after ${doIt}: ${document.querySelector("main")?.textContent?.slice(0, 900)}`,
          );
        await new Promise((next) => requestAnimationFrame(next));
      }
      await new Promise((next) => requestAnimationFrame(() => setTimeout(next, 0)));
      return performance.now() - start;
    },
    [act, there, GIVE_UP_MS] as const,
  );
}

const units = "document.querySelectorAll('main a[href^=\"#/unit/\"]').length";
const type = (text: string) => `
  const box = document.querySelector('input[type=search]');
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value').set.call(box, ${JSON.stringify(text)});
  box.dispatchEvent(new Event('input', { bubbles: true }));`;
/** The unit looked for stands first and few stand beside it: a sticker's code may hold the same digits. */
const found = (title: string) =>
  `${units} < 5 && document.querySelector('main a[href^="#/unit/"]')?.textContent.startsWith(${JSON.stringify(title)})`;
const dueListMs: number[] = [];
const searchMs: number[] = [];
const lotMs: number[] = [];
for (let i = 0; i < 5; i++) {
  dueListMs.push(await until("location.hash = '#/'", `${units} >= 40`));
  searchMs.push(await until(type(`kitchen 3${i}7`), found(`Kitchen 3${i}7,`)));
  lotMs.push(
    await until(type(`L-1${i}`), "document.querySelectorAll('main a[href^=\"#/part/\"]').length > 3"),
  );
  await until(type(""), `${units} >= 40`);
  await until("location.hash = '#/settings'", `${units} === 0`);
}
await until("location.hash = '#/'", `${units} >= 40`);
/** How many units the list kept for the next opening holds. */
const keptLines = () =>
  page.evaluate(
    (name) =>
      new Promise<number>((told) => {
        const asked = indexedDB.open(name);
        asked.onsuccess = () => {
          const row = asked.result.transaction("meta").objectStore("meta").get("list");
          row.onsuccess = () => told(row.result?.value.list.lines.length ?? 0);
        };
      }),
    "tapside",
  );
const keptBy = performance.now() + GIVE_UP_MS;
while ((await keptLines()) < SITES && performance.now() < keptBy) await page.waitForTimeout(200);
/** A page of its own, so that nothing is left of the one before. */
async function coldStart(): Promise<{ readonly listMs: number; readonly searchMs: number }> {
  const other = await page.context().newPage();
  const cdp = await page.context().newCDPSession(other);
  await cdp.send("Emulation.setCPUThrottlingRate", { rate: THROTTLE });
  const start = performance.now();
  await other.goto(url, { waitUntil: "commit" });
  await other.locator('main a[href^="#/unit/"]').first().waitFor();
  const listMs = performance.now() - start;
  const typed = performance.now();
  await other.locator("input[type=search]").fill("kitchen 317");
  await other.waitForFunction(found("Kitchen 317,"));
  const searchMs = performance.now() - typed;
  await other.close();
  return { listMs, searchMs };
}
const cold = [await coldStart(), await coldStart(), await coldStart()];
console.log(
  JSON.stringify(
    {
      calibrationMs: median(Array.from({ length: 9 }, calibration)),
      throttle: THROTTLE,
      sites: SITES,
      visits: SITES * VISITS_PER_SITE,
      dueListMs: { first: dueListMs[0], median: median(dueListMs) },
      searchMs: median(searchMs),
      lotSearchMs: median(lotMs),
      coldStartMs: median(cold.map(({ listMs }) => listMs)),
      coldSearchMs: median(cold.map(({ searchMs }) => searchMs)),
    },
    null,
    2,
  ),
);
await browser.close();
await server.close();
