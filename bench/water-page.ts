/**
 * The water page on a phone: time from a key to the curve with the page slowed six times, and from a key to the band with
 * nothing slowed (the browser's throttle does not slow workers). Targets 50 and 500 ms. Beside a calibration loop.
 * Prints JSON.
 */
import { chromium, type Page } from "playwright";
import { ensureApp } from "../tools/ensure-ready.mjs";
import { findBrowser } from "../tools/find-browser.mjs";
import { serve } from "../tools/serve.mjs";

const SLOWED = 6;
const KEYS = ["61", "62", "63", "64", "65", "66", "67", "68", "69"];
const median = (times: readonly number[]) => [...times].sort((a, b) => a - b)[times.length >> 1]!;

/** Milliseconds from a key in the calcium field to a frame that shows the new curve (or its band). */
async function follow(page: Page, what: "curve" | "band"): Promise<number[]> {
  const times: number[] = [];
  for (const text of KEYS) {
    const spent = await page.evaluate(
      ([typed, wanted]) =>
        new Promise<number>((resolve) => {
          const label = [...document.querySelectorAll("label")].find((one) => one.textContent === "Calcium")!;
          const input = document.getElementById(label.htmlFor) as HTMLInputElement;
          const before = document.querySelector(".curve")?.getAttribute("data-curve");
          const start = performance.now();
          Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!.set!.call(input, typed);
          input.dispatchEvent(new Event("input", { bubbles: true }));
          const look = () => {
            const curve = document.querySelector(".curve");
            const changed = curve?.getAttribute("data-curve") !== before;
            const there = wanted === "curve" || curve?.getAttribute("data-band") === "true";
            if (changed && there) resolve(performance.now() - start);
            else requestAnimationFrame(look);
          };
          look();
        }),
      [text, what] as const,
    );
    times.push(spent);
    await page.locator('.curve[data-band="true"]').waitFor();
  }
  return times;
}

/** Exponentials per second on the page: what this machine can do today. */
const calibration = (page: Page) =>
  page.evaluate(() => {
    const start = performance.now();
    let sum = 0;
    for (let i = 0; i < 2e6; i++) sum += Math.exp(-i * 1e-7);
    return Math.round(sum > 0 ? 2e9 / (performance.now() - start) : 0);
  });

ensureApp();
const { port, close } = await serve({ port: 4790 });
const { executablePath, args, env } = await findBrowser();
const browser = await chromium.launch({ executablePath, args, env: env as Record<string, string> });
const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
await page.goto(`http://localhost:${port}/`);
await page.getByRole("button", { name: /^Open the demo book/ }).click();
await page.getByLabel("Search").fill("Heron Mere secondary");
await page
  .getByRole("link", { name: /^Heron Mere secondary/ })
  .first()
  .click();
await page.getByRole("link", { name: /^Water here/ }).click();
await page.getByRole("button", { name: /^Add an analysis/ }).click();
for (const [name, text] of [
  ["Alkalinity", "140"],
  ["pH", "7.6"],
  ["Conductivity", "455"],
  ["Calcium", "60"],
] as const)
  await page.getByLabel(name, { exact: true }).fill(text);
await page.locator('.curve[data-band="true"]').waitFor();
const expPerSecond = await calibration(page);
const bandMs = await follow(page, "band");
const session = await page.context().newCDPSession(page);
await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
const curveMs = await follow(page, "curve");
console.log(
  JSON.stringify({
    bench: "water page",
    curveMsAtSixTimes: Math.round(median(curveMs)),
    worstCurveMsAtSixTimes: Math.round(Math.max(...curveMs)),
    targetCurveMs: 50,
    bandMs: Math.round(median(bandMs)),
    worstBandMs: Math.round(Math.max(...bandMs)),
    targetBandMs: 500,
    expPerSecond,
  }),
);
await browser.close();
await close();
