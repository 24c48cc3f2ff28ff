import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openUnit } from "./open-unit.ts";
import { closeBrowser, openBrowser, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";

describe("trying a change on a unit, offline", () => {
  beforeAll(async () => {
    await openBrowser();
  });
  afterAll(closeBrowser);

  it.each([
    { dark: false, width: 390 },
    { dark: true, width: 360 },
  ])("by thumb: colder, another charge, half the restrictor; the answer is at once, %j", async (look) => {
    const phone = await pickUpPhone(look);
    const suffix = look.dark ? "-dark" : "";
    await phone.offline();
    await phone.tap(/^Open the demo book/);
    await openUnit(phone, "Sallow Lane");
    await phone.tap("Try a change");
    await phone.page.getByRole("heading", { level: 1, name: "Try a change" }).waitFor();
    await phone.checkAccess("try");
    await shoot(phone, `try${suffix}`);
    const answer = phone.page.locator("[aria-live=polite]").first();
    const before = await answer.textContent();
    expect(before).toMatch(/as now/);
    for (let n = 0; n < 4; n++) await phone.tap("Water: less");
    await phone.page.getByText("8 °C").first().waitFor();
    expect(await answer.textContent()).not.toBe(before);
    const colder = hours(await answer.textContent());
    expect(colder.changed).toBeGreaterThan(colder.now);
    await phone.tap(/^Charge/);
    for (let n = 0; n < 7; n++) await phone.tap("Charge: more");
    await phone.tap(/^Restrictor/);
    for (let n = 0; n < 3; n++) await phone.tap("Restrictor: less");
    await phone.page.getByText("× 0.5").first().waitFor();
    await phone.tap("Second tank");
    await phone.checkAccess("changed");
    await shoot(phone, `try-changed${suffix}`);
    await phone.page.evaluate(() => window.scrollTo(0, 420));
    await shoot(phone, `try-below${suffix}`);
    await phone.tap(/^After standing/);
    const night = litresToRun(await phone.page.locator("main").textContent());
    await phone.checkAccess("standing");
    await phone.page.getByText("before judging").scrollIntoViewIfNeeded();
    await shoot(phone, `try-standing${suffix}`);
    await phone.tap(/^Break/);
    expect(litresToRun(await phone.page.locator("main").textContent())).toBeLessThanOrEqual(night);
    await phone.tap(/^After standing/);
    await phone.tap(/^A leak at night/);
    const leaky = () => phone.page.locator(".night-said").textContent();
    expect(await leaky()).toMatch(/ L at the tap\. First water from the tank [\d.]+ ppm/);
    const drops = startsAndDrain(await leaky());
    for (let n = 0; n < 4; n++) await phone.page.getByRole("button", { name: /^It leaks.*: more/ }).click();
    await phone.page.getByText("50 mL/min", { exact: true }).waitFor();
    await expect.poll(async () => startsAndDrain(await leaky()).drainL).toBeGreaterThan(drops.drainL);
    expect(startsAndDrain(await leaky()).starts).toBeGreaterThan(drops.starts);
    // 50 mL/min over ten hours by multiplication.
    expect(await leaky()).toContain("30 L at the tap");
    await phone.checkAccess("leak at night");
    await phone.page.locator(".night-said").scrollIntoViewIfNeeded();
    await shoot(phone, `try-leak${suffix}`);
    await phone.tap(/^Check valve leaks/);
    await expect.poll(leaky).not.toContain("at the tap");
    await phone.checkAccess("check valve at night");
    await phone.tap(/^A leak at night/);
    await phone.tap(/^A wanted recovery/);
    const restrictor = phone.page.locator(".answer", { hasText: "mL/min" });
    const at25 = mLPerMin(await restrictor.textContent());
    for (let n = 0; n < 2; n++) await phone.tap("Recovery: less");
    await phone.page.getByText("15 %", { exact: true }).waitFor();
    await expect.poll(async () => mLPerMin(await restrictor.textContent())).toBeGreaterThan(at25);
    await phone.tap("Winter: less");
    await phone.checkAccess("restrictor");
    await restrictor.scrollIntoViewIfNeeded();
    await shoot(phone, `try-restrictor${suffix}`);
    await phone.tap(/^A wanted recovery/);
    expect(await phone.page.locator("main").innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
    await phone.tap(/^As it is/);
    expect(await answer.textContent()).toBe(before);
    await phone.tap(/^Unit/);
    await phone.page.getByRole("heading", { level: 1, name: /Sallow Lane/ }).waitFor();
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
    await phone.close();
  });

  it("the demo book of 60 units opens whole on a phone six times slower; its time is printed", async () => {
    const phone = await pickUpPhone();
    await phone.offline();
    const session = await phone.context.newCDPSession(phone.page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: 6 });
    const from = Date.now();
    await phone.tap(/^Open the demo book/);
    await phone.page.getByText("Fallow Ground secondary, Unit 2").first().waitFor();
    console.info(`demo book open after ${Date.now() - from} ms at 6 times throttle`);
    expect(await phone.page.getByText("60 units").count()).toBe(1);
    await phone.close();
  });
});

/** "Let 0.2–0.6 L run, …": the upper end. */
function litresToRun(text: string | null): number {
  const found = /Let [\d.]+–([\d.]+) L run/.exec(text ?? "");
  if (!found) throw new Error(`no litres to run in ${text}`);
  return Number(found[1]);
}

/** "It starts 2–6 times in ten hours, 21 L to the drain, …": the most starts, and the litres. */
function startsAndDrain(text: string | null): { starts: number; drainL: number } {
  const found =
    /It (?:starts (?:\d+–)?(\d+) times in ten hours|does not start).*?, (?:nothing|([\d.]+) L) to the drain/.exec(
      text ?? "",
    );
  if (!found) throw new Error(`no night in ${text}`);
  return { starts: Number(found[1] ?? 0), drainL: Number(found[2] ?? 0) };
}

/** "…770 mL/min, now 900 mL/min". */
function mLPerMin(text: string | null): number {
  const found = /(\d+) mL\/min/.exec(text ?? "");
  if (!found) throw new Error(`no mL/min in ${text}`);
  return Number(found[1]);
}

/** "Full in2.6 h, now 2.1 h…" */
function hours(text: string | null): { changed: number; now: number } {
  const found = /Full in([\d.]+) h, now ([\d.]+) h/.exec(text ?? "");
  if (!found) throw new Error(`no hours in ${text}`);
  return { changed: Number(found[1]), now: Number(found[2]) };
}
