import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { setUpKitchen } from "./kitchen.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";

const MINUTE = 60_000;
/** Five minutes before clocks in London go from 01:00 to 02:00. */
const BEFORE_SUMMER_TIME = Date.UTC(2027, 2, 28, 0, 55);

describe("three timers at once", () => {
  let phone: Phone;
  let visit: string;
  beforeAll(async () => {
    await openBrowser();
    phone = await pickUpPhone();
    const zone = await phone.context.newCDPSession(phone.page);
    await zone.send("Emulation.setTimezoneOverride", { timezoneId: "Europe/London" });
    await phone.page.addInitScript(() => {
      const w = window as unknown as { shiftMs: number };
      const real = Date.now.bind(Date);
      w.shiftMs = 0;
      Date.now = () => real() + w.shiftMs;
    });
    await shiftFromNextStart(BEFORE_SUMMER_TIME - Date.now());
    await phone.offline();
    await phone.page.reload();
    await setUpKitchen(phone);
    await phone.tap(/^Start visit/);
    await phone.tap(/^In use/);
    visit = phone.page.url().replace(/\/[^/]+$/, "");
  }, 120_000);
  afterAll(async () => {
    await phone?.close();
    await closeBrowser();
  });

  /** Moves the clock of every page that is opened from now on, as time does while the app is closed. */
  const shiftFromNextStart = (ms: number) =>
    phone.page.addInitScript((by) => {
      (window as unknown as { shiftMs: number }).shiftMs += by;
    }, ms);
  /** Sets the clock of the page that is open, as people and networks do. */
  const setClock = (ms: number) =>
    phone.page.evaluate((by) => {
      (window as unknown as { shiftMs: number }).shiftMs += by;
    }, ms);
  const restart = async () => {
    await phone.page.goto("about:blank");
    await phone.page.goto(`${visit}/timers`);
    await phone.page.getByRole("heading", { level: 1, name: "Waiting" }).waitFor();
  };
  /** Minutes a timer still shows; below zero once it is ready. */
  const minutesLeft = async (what: string): Promise<number> => {
    const name = await phone.page
      .locator(`[data-timer="${what}"] svg[role="img"]`)
      .getAttribute("aria-label");
    const [seconds = 0, minutes = 0, hours = 0] = (name?.match(/[\d:]+$/)?.[0] ?? "")
      .split(":")
      .map(Number)
      .reverse();
    return (hours * 60 + minutes + seconds / 60) * (name?.includes("over by") ? -1 : 1);
  };

  /** Within a second of the jump the timer shows what it showed, less the seconds that really passed. */
  const staysAt = (what: string, minutes: number) =>
    expect.poll(async () => Math.abs(minutes - (await minutesLeft(what)))).toBeLessThan(0.5);

  it("run side by side, with the next thing for the hands on top of every screen", async () => {
    const { page } = phone;
    await page.goto(`${visit}/timers`);
    await phone.checkAccess("no timer");
    await phone.tap(/^Tank draining/);
    await phone.tap(/^To waste/);
    await phone.tap(/^Contact time/);
    await phone.checkAccess("three timers");
    await shoot(phone, "timers");
    await page.goto(`${visit}/read/asFound/feedTds`);
    await page.getByRole("link", { name: /^Next for your hands/ }).waitFor();
    await phone.checkAccess("a number under timers");
    await shoot(phone, "entry-under-timers");
    await page.goto(`${visit}/timers`);
    expect(Math.round(await minutesLeft("tankDraining"))).toBe(20);
    expect(Math.round(await minutesLeft("toWaste"))).toBe(8);
  });

  it("go on over a restart and the change to summer time", async () => {
    const { page } = phone;
    const before = await minutesLeft("contact");
    await shiftFromNextStart(9 * MINUTE);
    await restart();
    expect(await page.evaluate(() => new Date(Date.now()).toTimeString())).toMatch(/^02:\d\d:\d\d GMT\+0100/);
    expect(before - (await minutesLeft("contact"))).toBeCloseTo(9, 0);
    expect(await minutesLeft("tankDraining")).toBeCloseTo(11, 0);
    expect(await minutesLeft("toWaste")).toBeLessThan(0);
    await shoot(phone, "timers-ready");
    await phone.checkAccess("a timer is ready");
    await page.goto(visit);
    await page.getByRole("link", { name: /^Ready: To waste/ }).waitFor();
    await phone.checkAccess("overview, a timer is ready");
    await page.goto(`${visit}/timers`);
  });

  it("are counted without a jump of the clock, and say so", async () => {
    const { page } = phone;
    const before = await minutesLeft("contact");
    await setClock(60 * MINUTE);
    await page
      .getByText(/clock was set forward by (1:00:|59:5)/)
      .first()
      .waitFor();
    await staysAt("contact", before);
    expect(await minutesLeft("tankDraining")).toBeGreaterThan(10);
    await shoot(phone, "timers-jump");
    await phone.checkAccess("clock jumped");
    await setClock(-180 * MINUTE);
    await page
      .getByText(/clock was set back by (2:00:|1:59:)/)
      .first()
      .waitFor();
    await staysAt("contact", before);
  });

  it("notice after a restart that the clock went back", async () => {
    const { page } = phone;
    const before = await minutesLeft("contact");
    await shiftFromNextStart(-300 * MINUTE);
    await restart();
    await page
      .getByText(/clock was set back by/)
      .first()
      .waitFor();
    await staysAt("contact", before);
  });

  it("end at a tap, and no permission was asked without one", async () => {
    const { page } = phone;
    for (const what of ["tankDraining", "toWaste", "contact"])
      await page.locator(`[data-timer="${what}"]`).getByRole("button", { name: "Done" }).click();
    await page.getByText("Nothing is running.").waitFor();
    expect(await page.locator(".timer-strip").count()).toBe(0);
    expect(await page.evaluate(() => Notification.permission)).not.toBe("granted");
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  });
});
