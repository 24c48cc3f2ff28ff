/**
 * The search for a cause in a real browser, on the practice unit: a step (odds, evidence, next test and its meanings) from the question
 * to the worker's answer, un-throttled; from the tap that adds a reading to the odds drawn, at 6× page throttle, which does not slow the
 * worker; the worker's check of fit. Beside a calibration loop in the same page. Prints JSON with the goals.
 */
import { chromium, type Page } from "playwright";
import { ensureApp } from "../tools/ensure-ready.mjs";
import { findBrowser } from "../tools/find-browser.mjs";
import { serve } from "../tools/serve.mjs";

const THROTTLE = 6;

ensureApp();
const { port, close } = await serve({ port: 4791 });
const { executablePath, args, env } = await findBrowser();
const browser = await chromium.launch({ executablePath, args, env: env as Record<string, string> });
const context = await browser.newContext({
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
});
const page = await context.newPage();
page.setDefaultTimeout(60_000);

/** Listens at the page's workers, and lets every practice unit be the same. */
await page.addInitScript(() => {
  const laps: { asked: number; diagnosed?: number; fitted?: number }[] = [];
  Object.assign(window, { laps });
  const Real = Worker;
  window.Worker = class extends Real {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      this.addEventListener("message", ({ data }) => {
        const lap = laps.at(-1);
        if (lap && data.kind === "diagnosed") lap.diagnosed = performance.now();
        if (lap && data.kind === "fit") lap.fitted = performance.now();
      });
    }
    override postMessage(question: { readonly kind?: string }) {
      if (question.kind === "diagnose") laps.push({ asked: performance.now() });
      super.postMessage(question);
    }
  };
  const draw = crypto.getRandomValues.bind(crypto);
  crypto.getRandomValues = (array) =>
    array instanceof Uint32Array && array.length === 1 ? (array.fill(11) as typeof array) : draw(array);
});

interface Lap {
  /** From the question to the answer. */
  readonly stepMs: number;
  /** From the tap to the frame that shows the odds. */
  readonly shownMs: number;
  /** From the answer to the check's. */
  readonly checkMs: number;
}

/** Takes one test and waits for everything it brings; or only for the odds. */
const take = (test: string, until: "diagnosed" | "fitted") =>
  page.evaluate(
    ([name, last]) =>
      new Promise<Lap>((done, fail) => {
        const { laps } = window as unknown as {
          laps: { asked: number; diagnosed?: number; fitted?: number }[];
        };
        const before = laps.length;
        let shown = 0;
        const [button] = [...document.querySelectorAll<HTMLElement>("main button.band")].filter((one) =>
          one.textContent?.startsWith(name!),
        );
        const start = performance.now();
        const look = () =>
          requestAnimationFrame(() => {
            const lap = laps[before];
            if (lap?.diagnosed && !shown) shown = performance.now();
            if (!lap?.[last as "diagnosed"]) return look();
            requestAnimationFrame(() =>
              done({
                stepMs: lap.diagnosed! - lap.asked,
                shownMs: Math.max(shown, last === "diagnosed" ? performance.now() : 0) - start,
                checkMs: (lap.fitted ?? 0) - lap.diagnosed!,
              }),
            );
          });
        if (!button) return fail(new Error(`no test is called ${name}`));
        button.click();
        look();
      }),
    [test, until] as const,
  );

const calibration = (on: Page) =>
  on.evaluate(() => {
    const start = performance.now();
    let sum = 0;
    for (let k = 1; k <= 1_000_000; k++) sum += Math.exp(-Math.sqrt(k * 1e-6));
    return sum > 0 ? performance.now() - start : 0;
  });

/** Readings in an odd order; pressure and temperature of the day make the simulated visits anew. */
const TESTS = [
  "Permeate flow",
  "Feed temperature",
  "Delivered TDS",
  "Pressure before the filters",
  "Drain flow",
  "Feed TDS",
  "Hardness of the feed",
  "Pressure after the filters",
  "Permeate TDS",
  "Standing feed pressure",
];

async function begin() {
  await page.goto(`http://localhost:${port}/#/more`);
  await page.reload();
  await page.getByRole("link", { name: "Practice unit" }).click();
  await page.getByRole("button", { name: /^Hard/ }).click();
  await page.getByRole("button", { name: "Show the odds" }).click();
  await page.locator(".odds-rail").first().waitFor();
  await page.waitForTimeout(1500);
}

async function run(until: "diagnosed" | "fitted"): Promise<readonly Lap[]> {
  await begin();
  const laps: Lap[] = [];
  for (const test of TESTS) laps.push(await take(test, until));
  return laps;
}

const session = await context.newCDPSession(page);
await run("fitted");
const calibrationMs = await calibration(page);
const calm = [...(await run("fitted")), ...(await run("fitted"))];
/** One tap upon the other, so that every step finds the check of the one before under way. */
const hurried = await run("diagnosed");
await begin();
await session.send("Emulation.setCPUThrottlingRate", { rate: THROTTLE });
const throttledCalibrationMs = await calibration(page);
const throttled: Lap[] = [];
for (const test of TESTS) throttled.push(await take(test, "diagnosed"));
await browser.close();
close();

const quantile = (laps: readonly Lap[], name: keyof Lap, share: number) => {
  const sorted = laps.map((lap) => lap[name]).sort((a, b) => a - b);
  return Math.round(sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!);
};
console.log(
  JSON.stringify(
    {
      bench: "cause",
      calibrationMs: Math.round(calibrationMs),
      throttledCalibrationMs: Math.round(throttledCalibrationMs),
      stepMs: quantile(calm, "stepMs", 0.5),
      stepP95Ms: quantile(calm, "stepMs", 0.95),
      goalStepMs: 33,
      hurriedStepMs: quantile(hurried, "stepMs", 0.5),
      tapToOddsMs: quantile(calm, "shownMs", 0.5),
      tapToOddsAt6xMs: quantile(throttled, "shownMs", 0.5),
      tapToOddsAt6xP95Ms: quantile(throttled, "shownMs", 0.95),
      goalStepAt6xMs: 200,
      checkMs: quantile(calm, "checkMs", 0.5),
      checkWorstMs: quantile(calm, "checkMs", 1),
      goalCheckMs: 2000,
    },
    null,
    2,
  ),
);
