import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openUnit } from "./open-unit.ts";
import { closeBrowser, openBrowser, type Phone, pickUpPhone } from "./phone.ts";
import { shoot } from "./shoot.ts";

const heading = (phone: Phone, name: string | RegExp) =>
  phone.page.getByRole("heading", { level: 1, name }).waitFor();
const goTo = (phone: Phone, path: string) => phone.page.goto(`${phone.page.url().split("#")[0]}#${path}`);
const here = (phone: Phone) => phone.page.url().split("#")[1] ?? "";

const LOOKS = [
  { dark: false, width: 390 },
  { dark: true, width: 360 },
];

/** Readings of a clogged pre-filter: pressure is lost across the filters and the permeate is short. Common practice, no source. */
const CLOGGED = [
  ["staticPressure", "62"],
  ["beforeFilterPressure", "58"],
  ["afterFilterPressure", "21"],
] as const;

describe("from a trouble to its cause, offline", () => {
  beforeAll(async () => {
    await openBrowser();
  });
  afterAll(closeBrowser);

  it.each(LOOKS)("a few numbers, the odds, the next test, the repair, %j", async (look) => {
    const suffix = look.dark ? "-dark" : "";
    const phone = await pickUpPhone(look);
    const { page } = phone;
    await phone.offline();
    await phone.tap(/^Open the demo book/);
    await openUnit(phone, "Sallow Lane");
    await phone.tap(/^Start visit/);
    await page.waitForURL(/visit/);
    const visit = /\/visit\/[^/]+/.exec(here(phone))?.[0] ?? "";
    await goTo(phone, `${visit}/cause`);
    await heading(phone, "Find the cause");
    await page.locator(".odds-rail").first().waitFor({ timeout: 30_000 });
    await phone.checkAccess("cause, nothing read");
    for (const [test, text] of CLOGGED) {
      await goTo(phone, `${visit}/cause/${test}`);
      await page.locator("main button.band").first().click();
      await page.locator(".keypad").waitFor();
      await phone.number(text);
      await heading(phone, "Find the cause");
    }
    const first = page.locator("button.band:has(.odds-rail)").first();
    await first.filter({ hasText: "Pre-filter clogged" }).waitFor({ timeout: 30_000 });
    await first.click();
    await first.getByText("pressure after the filters").first().waitFor();
    await first.getByText("How large").waitFor({ timeout: 10_000 });
    await first.getByText("Expected").waitFor();
    await phone.checkAccess("cause");
    await shoot(phone, `cause${suffix}`);

    await goTo(phone, `${visit}/cause/lookAtTubing`);
    await phone.tap("Not seen");
    await phone.checkAccess("looks");
    await shoot(phone, `cause-looks${suffix}`);
    await goTo(phone, `${visit}/cause/drawOff`);
    await page.locator("main button.band").first().click();
    await phone.checkAccess("note");
    await shoot(phone, `cause-note${suffix}`);
    await phone.number("6.5");
    await phone.tap("Find the cause");

    await page.locator(".odds-rail").first().waitFor({ timeout: 30_000 });
    await phone.tap("Other tests");
    expect(await page.locator('main a[href*="/cause/"]').count()).toBeGreaterThan(8);
    await phone.tap(/^Other tests/);
    await phone.tap("Repair plan");
    await page
      .getByText("Local code, the appliance's manual and licensed practice govern.")
      .first()
      .waitFor();
    await phone.checkAccess("plan");
    await page.locator("section[aria-label]").first().scrollIntoViewIfNeeded();
    await shoot(phone, `cause-plan${suffix}`);
    await phone.tap(/^Kitchen, van, prepared/);
    await phone.tap("Busy");
    await phone.tap("Hand pump");
    expect(await page.getByRole("button", { name: "Hand pump" }).getAttribute("aria-pressed")).toBe("false");
    await shoot(phone, `cause-hour${suffix}`);
    await phone.tap(/^Kitchen, van, prepared/);
    await phone.tap("Repair plan");
    await phone.tap(/^It is put right/);
    await page.getByText(/Odds now from what was measured again/).waitFor();
    await phone.tap(/^Pressure after the filters/);
    await page.locator("main button.band").first().click();
    await phone.number("57");
    await heading(phone, "Find the cause");
    await page.locator(".odds-rail").first().waitFor({ timeout: 30_000 });
    expect(await first.textContent()).not.toContain("Pre-filter clogged");
    const foundIt = page.getByRole("button", { name: "Found: Pre-filter clogged" });
    if (await foundIt.count()) await foundIt.click();
    await shoot(phone, `cause-after${suffix}`);
    expect(await page.locator("main").innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
    await phone.close();
  });

  it.each(LOOKS)("a practice unit from its choice to the planner's log, %j", async (look) => {
    const suffix = look.dark ? "-dark" : "";
    const phone = await pickUpPhone(look);
    const { page } = phone;
    await phone.offline();
    await goTo(phone, "/more");
    await phone.tap("Practice unit");
    await heading(phone, "Practice unit");
    await phone.checkAccess("choice");
    await phone.tap(/^Easy/);
    for (const test of [
      "Feed TDS",
      "Pressure before the filters",
      "Pressure after the filters",
      "Follow the tubing",
    ])
      await phone.tap(new RegExp(`^${test}`));
    await phone.tap("Show the odds");
    await page.locator(".odds-rail").first().waitFor({ timeout: 30_000 });
    await phone.checkAccess("practice");
    await shoot(phone, `practice${suffix}`);
    await phone.tap("Put right");
    await phone.tap("Pre-filter clogged");
    await phone.tap(/^Decide/);
    await heading(phone, "What it was");
    await page.getByRole("heading", { level: 2, name: "The planner" }).waitFor({ timeout: 60_000 });
    await phone.checkAccess("practice, end");
    await shoot(phone, `practice-end${suffix}`);
    expect(await page.locator("main").innerHTML()).not.toMatch(/NaN|undefined|Infinity/);
    await phone.tap("Another unit");
    await page.getByText("How hard?").waitFor();
    expect(phone.errors.filter((error) => !error.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
    await phone.close();
  });
});
